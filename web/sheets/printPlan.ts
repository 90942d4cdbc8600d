import type { PaperName } from "../../presets/sheets/papers"
import type { SheetName } from "../../presets/sheets/sheetNames"
import type { Plan } from "../core/document/schema"
import type { Progress } from "../session/askBeside"
import { type Language, loadWords } from "../words/every/languages"
import { optionsOf } from "./optionsOf"
import { drawPage } from "./pens/drawPage"
import { fingerprint } from "./pens/fingerprint"
import type { Fonts } from "./pens/fontFile"
import { loadFonts, type ReadFont } from "./pens/loadFonts"
import type { Sheet } from "./pens/page"
import { openPdf } from "./pens/pdfPen"
import { layOutSheet, sheetAsHtml } from "./sheetKinds"

export type PrintOptions = {
  sheet: SheetName
  paper: PaperName
  mirror: boolean
  language: Language
  /** Whose handout it is, where it is printed for one of a class. */
  learner?: string | undefined
}

/** A sheet of a plan as a PDF file. The same plan gives the same bytes. */
export async function printPlan(plan: Plan, options: PrintOptions, readFont?: ReadFont): Promise<Uint8Array> {
  const { sheet, fonts } = await layoutPlan(plan, options, readFont)
  return toPdf(sheet, fonts)
}

/** The pages of a sheet as data. */
export async function layoutPlan(
  plan: Plan,
  { sheet: name, paper, mirror, language, learner }: PrintOptions,
  readFont?: ReadFont,
): Promise<{ sheet: Sheet; fonts: Fonts }> {
  const [fonts, words] = await Promise.all([loadFonts(readFont), loadWords(language)])
  const options = { ...optionsOf(plan, { paper, mirror, language, words }), learner }
  return { sheet: layOutSheet(name, plan, options, fonts), fonts }
}

/** A sheet as a page for a browser; null where it is for paper alone. */
export async function planAsHtml(plan: Plan, { sheet, ...print }: PrintOptions): Promise<string | null> {
  const words = await loadWords(print.language)
  return sheetAsHtml(sheet, plan, optionsOf(plan, { ...print, words }))
}

export function toPdf(sheet: Sheet, fonts: Fonts, onPage?: Progress): Uint8Array {
  const pdf = openPdf(sheet, fingerprint(sheet.pages), fonts)
  for (const [i, page] of sheet.pages.entries()) {
    if (i > 0) pdf.nextPage(page)
    drawPage(page, pdf.pen)
    onPage?.(i + 1, sheet.pages.length)
  }
  return pdf.bytes()
}
