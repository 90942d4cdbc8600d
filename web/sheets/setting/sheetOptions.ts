import type { Contact } from "../../core/document/salon"
import type { Words } from "../../words/en/words"
import type { Language } from "../../words/every/languages"
import type { Paper } from "../pens/page"

/**
 * `stops` says in a sentence whether the mix is held, empty says nothing; `zone` is the time zone of the salon's
 * clock; `words` are those of the sheet's `language`, which need not be that of the screen.
 */
export type SheetOptions = {
  paper: Paper
  mirror: boolean
  stops: string
  /** What the map says in its head while the plan is not cleared, empty when it is. */
  alert?: string
  zone: string
  /** How the salon is reached from the desk it is printed at; what the plan brought along where the desk says nothing. */
  contact?: Contact | undefined
  /** Whose handout it is, where it is printed for one of a class. */
  learner?: string | undefined
  language: Language
  words: Words
  /** Hears how many of the steps of a long sheet are laid out. */
  onStep?: (done: number, count: number) => void
}
