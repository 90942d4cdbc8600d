import type { Plan } from "../core/document/schema"
import type { SheetName } from "../session/sessionStore"
import { drawPage } from "./pens/drawPage"
import { fingerprint } from "./pens/fingerprint"
import type { Fonts } from "./pens/fontFile"
import { loadFonts, type ReadFont } from "./pens/loadFonts"
import { type Page, type PaperName, papers } from "./pens/page"
import { openPdf } from "./pens/pdfPen"
import { titleOf } from "./setting/heading"
import { sheetKinds } from "./sheetKinds"
import { stopsAtPrintTime } from "./stopsAtPrintTime"

export type PrintOptions = { sheet: SheetName; paper: PaperName; mirror: boolean }

/** A sheet of a plan as a PDF file. The same plan gives the same bytes. */
export async function printPlan(plan: Plan, options: PrintOptions, readFont?: ReadFont): Promise<Uint8Array> {
  const { pages, fonts } = await layoutPlan(plan, options, readFont)
  return toPdf(pages, plan, fonts)
}

/** The pages of a sheet as data. */
export async function layoutPlan(
  plan: Plan,
  { sheet, paper, mirror }: PrintOptions,
  readFont?: ReadFont,
): Promise<{ pages: Page[]; fonts: Fonts }> {
  const fonts = await loadFonts(readFont)
  const options = { paper: papers[paper], mirror, ...stopsAtPrintTime(plan) }
  return { pages: sheetKinds[sheet].layOut(plan, options, fonts), fonts }
}

export function toPdf(pages: readonly Page[], plan: Plan, fonts: Fonts): Uint8Array {
  const about = { title: titleOf(plan), date: plan.date, fileId: fingerprint(JSON.stringify(pages)) }
  const pdf = openPdf(pages[0].paper, about, fonts)
  for (const [i, page] of pages.entries()) {
    if (i > 0) pdf.nextPage(page)
    drawPage(page, pdf.pen)
  }
  return pdf.bytes()
}
