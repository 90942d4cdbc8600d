import type { Language } from "../words/every/languages"

/** What says in which language a sheet is; null where it says nothing. */
type Said = {
  /** It goes to the client. */
  isForClient: boolean
  /** On the client's card. */
  card: Language | null
  /** By hand, for the client's sheets of this plan. */
  here: Language | null
  /** By hand, for all sheets of this browser. */
  chosen: Language | null
  screen: Language
}

/** The language of a sheet: the client's own comes before the salon's on what the client reads, and a choice for it before both. */
export function sheetLanguage({ isForClient, card, here, chosen, screen }: Said): Language {
  const salons = chosen ?? screen
  return isForClient && card !== null ? (here ?? card) : salons
}
