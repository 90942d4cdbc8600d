import { useEffect, useState } from "react"
import { type PaperName, paperNames } from "../../presets/sheets/papers"
import { useLanguage, useWords } from "../session/words"
import type { Words } from "../words/en/words"
import { type Language, languageNames, loadWords } from "../words/every/languages"
import { useKeptSetting } from "./keptSetting"
import { usualPaper } from "./usualPaper"

/** The language and the paper of sheets: as chosen last in this browser, else as the screen is read. */
export function useSheetSettings() {
  const screenLanguage = useLanguage()
  const [chosenLanguage, chooseLanguage] = useKeptSetting<Language>("sheet-language", languageNames)
  const [chosenPaper, choosePaper] = useKeptSetting<PaperName>("paper", paperNames)
  const language = chosenLanguage ?? screenLanguage
  const paper = chosenPaper ?? usualPaper(language, navigator.language)
  return { language, chooseLanguage, paper, choosePaper, ...useWordsOf(language) }
}

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
