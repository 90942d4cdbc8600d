import { type PaperName, paperNames } from "../../../presets/sheets/papers"
import type { ArgumentProblem } from "../../core/command/argumentProblem"
import { usualPaper } from "../../sheets/usualPaper"
import type { Language } from "../../words/every/languages"

/** The paper that was typed, else the usual one of the language; null for what is none. */
export const paperMeant = (typed: string | undefined, language: Language): PaperName | null =>
  typed === undefined ? usualPaper(language, language) : (paperNames.find((each) => each === typed) ?? null)

export const wrongPaper = (typed: string | undefined): ArgumentProblem => ({
  code: "not-a-choice",
  option: "paper",
  known: paperNames,
  found: typed ?? null,
})
