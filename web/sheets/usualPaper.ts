import type { PaperName } from "../../presets/sheets/papers"
import type { Language } from "../words/every/languages"

/** Where Letter is the paper in the printer. */
const letterRegions = /-(US|CA|MX|PH|CL|CO|CR|GT|PA|PR|SV|VE)\b/

/** The paper of a language that belongs to one region, else that of the reader's own. */
export const usualPaper = (language: Language, reader: string): PaperName =>
  letterRegions.test(language.includes("-") ? language : reader) ? "letter" : "a4"
