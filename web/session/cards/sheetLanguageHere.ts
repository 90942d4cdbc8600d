import { createStore } from "zustand/vanilla"
import type { Language } from "../../words/every/languages"

/** The language chosen by hand for the client's sheets of one plan, instead of that of the card; until the window closes. */
export const sheetLanguageHere = createStore<{ planId: string; language: Language | null }>(() => ({
  planId: "",
  language: null,
}))
