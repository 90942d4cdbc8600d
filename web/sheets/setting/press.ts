import type { Words } from "../../words/en/words"
import type { Language } from "../../words/every/languages"
import type { Fonts } from "../pens/fontFile"

/** What a sheet is set with: the letters there are, and the words of its language. */
export type Press = { fonts: Fonts; words: Words; language: Language }
