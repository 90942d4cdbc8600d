import { useEffect, useState } from "react"
import { useStore } from "zustand"
import { type PaperName, paperNames } from "../../presets/sheets/papers"
import type { SheetName } from "../../presets/sheets/sheetNames"
import type { ClientCard } from "../core/cards/card"
import { cardHere } from "../session/cards/cardHere"
import { sheetLanguageHere } from "../session/cards/sheetLanguageHere"
import { usePlan } from "../session/usePlan"
import { useLanguage, useWords } from "../session/words"
import type { Words } from "../words/en/words"
import { type Language, languageNames, loadWords } from "../words/every/languages"
import { useKeptSetting } from "./keptSetting"
import { sheetKinds } from "./sheetKinds"
import { sheetLanguage } from "./sheetLanguage"
import { usualPaper } from "./usualPaper"

/**
 * The language and the paper of a sheet: as chosen last in this browser, else as the screen is read; the client's own
 * language, where the card of the plan says it, on what the client takes along.
 */
export function useSheetSettings(sheet: SheetName) {
  const screenLanguage = useLanguage()
  const [chosenLanguage, chooseLanguage] = useKeptSetting<Language>("sheet-language", languageNames)
  const [chosenPaper, choosePaper] = useKeptSetting<PaperName>("paper", paperNames)
  const planId = usePlan(({ id }) => id)
  const card = useStore(cardHere, (now) => (now.planId === planId ? cardLanguage(now.card) : null))
  const here = useStore(sheetLanguageHere, (now) => (now.planId === planId ? now.language : null))
  const isForClient = sheetKinds[sheet].isForClient === true
  const language = sheetLanguage({
    isForClient,
    card,
    here,
    chosen: chosenLanguage,
    screen: screenLanguage,
  })
  const choose = (next: Language) =>
    isForClient && card !== null
      ? sheetLanguageHere.setState({ planId, language: next })
      : chooseLanguage(next)
  // The printer is the salon's, whoever reads the sheet.
  const paper = chosenPaper ?? usualPaper(chosenLanguage ?? screenLanguage, navigator.language)
  return { language, chooseLanguage: choose, paper, choosePaper, ...useWordsOf(language) }
}

const cardLanguage = (card: ClientCard | null): Language | null =>
  languageNames.find((name) => name === card?.sheetLanguage) ?? null

/** The words of a language that need not be that of the screen; null until they are here. */
function useWordsOf(language: Language): { words: Words | null; hasFailed: boolean } {
  const screenLanguage = useLanguage()
  const screenWords = useWords()
  const [loaded, setLoaded] = useState<{ language: Language; words: Words | null } | null>(null)
  useEffect(() => {
    let isWanted = true
    const keep = (words: Words | null) => isWanted && setLoaded({ language, words })
    loadWords(language).then(keep, () => keep(null))
    return () => {
      isWanted = false
    }
  }, [language])
  if (language === screenLanguage) return { words: screenWords, hasFailed: false }
  const isHere = loaded?.language === language
  return { words: isHere ? loaded.words : null, hasFailed: isHere && loaded.words === null }
}
