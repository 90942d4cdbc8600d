import { askBeside, type Progress } from "../session/askBeside"
import { isCalledOff } from "../session/saveFile"
import type { Words } from "../words/en/words"
import type { Fonts } from "./pens/fontFile"
import type { Paper, Sheet } from "./pens/page"
import { svgPage, svgPages } from "./pens/svgPages"
import { layOutSheet } from "./sheetKinds"
import type { SheetAnswer, SheetQuestion, SheetWanted } from "./sheetNews"
import SheetWorker from "./sheetWorker?worker"

/** A sheet that has been laid out; what it looks like is asked for page by page. */
export type LaidSheet = {
  papers: readonly Paper[]
  page(page: number, prefix: string, label: string): Promise<string>
  pages(): Promise<readonly string[]>
  /** All pages where they have been drawn already. */
  drawn(): readonly string[] | null
  pdf(onPage?: Progress): Promise<Uint8Array<ArrayBuffer>>
}

export type SheetMaker = {
  layOut(wanted: SheetWanted, given: { fonts: Fonts; words: Words; onStep: Progress }): Promise<LaidSheet>
  /** Whatever is asked for still is called off. */
  end(): void
}

/** Lays out one sheet after another in a worker; where there can be none, or it fails, here. */
export function sheetMaker(): SheetMaker {
  const worker = sheetWorker()
  return {
    end: worker.end,
    async layOut(wanted, { fonts, words, onStep }) {
      let drawn: LaidSheet | null = null
      const here = () => {
        drawn ??= laidHere(layOutSheet(wanted.name, wanted.plan, { ...wanted.options, words }, fonts), fonts)
        return drawn
      }
      if (typeof OffscreenCanvas === "undefined") return here()
      const made = await unlessItFails(() => worker.layOut(wanted, fonts, onStep))
      return made ? orElse(made, here) : here()
    },
  }
}

/** A sheet of a worker; what it fails to answer is made here. */
function orElse(made: LaidSheet, here: () => LaidSheet): LaidSheet {
  const asked = async <Answer>(ask: (sheet: LaidSheet) => Promise<Answer>) =>
    (await unlessItFails(() => ask(made))) ?? ask(here())
  return {
    papers: made.papers,
    page: (...which) => asked((sheet) => sheet.page(...which)),
    ...drawnOnce(() => asked((sheet) => sheet.pages())),
    pdf: (onPage) => asked((sheet) => sheet.pdf(onPage)),
  }
}

/** What a worker answers; null where it failed. What was called off stays so. */
const unlessItFails = <Answer>(ask: () => Promise<Answer>): Promise<Answer | null> =>
  ask().catch((error) => {
    if (isCalledOff(error)) throw error
    return null
  })

const laidHere = (sheet: Sheet, fonts: Fonts): LaidSheet => ({
  papers: sheet.pages.map(({ paper }) => paper),
  page: async (page, prefix, label) => svgPage(sheet.pages[page], prefix, label),
  ...drawnOnce(async () => svgPages(sheet.pages)),
  pdf: async (onPage) => Uint8Array.from((await import("./printPlan")).toPdf(sheet, fonts, onPage)),
})

/** All pages, drawn for whoever asks first. */
function drawnOnce(draw: () => Promise<readonly string[]>): Pick<LaidSheet, "pages" | "drawn"> {
  let coming: Promise<readonly string[]> | null = null
  let drawn: readonly string[] | null = null
  return {
    pages() {
      coming ??= draw().then((pages) => {
        drawn = pages
        return pages
      })
      return coming
    },
    drawn: () => drawn,
  }
}

/** The worker for sheets: it begins with the first and ends with the last. */
function sheetWorker() {
  const beside = askBeside<SheetQuestion, SheetAnswer>(() => new SheetWorker())
  const svg = async (question: SheetQuestion) => {
    const answer = await beside.ask(question).answer
    if (answer?.kind !== "svg") throw new Error("the page did not come")
    return answer.svg
  }
  return {
    end: beside.end,
    async layOut(
      wanted: SheetWanted,
      { regular, semibold }: Fonts,
      onStep: Progress,
    ): Promise<LaidSheet | null> {
      // What was asked before has been overtaken, and may take long.
      if (beside.isAsked()) beside.end()
      const fonts = { regular: regular.bytes, semibold: semibold.bytes }
      const { number: of, answer } = beside.ask({ ask: "sheet", wanted, fonts }, onStep)
      const laid = await answer
      if (laid?.kind !== "sheet") return null
      return {
        papers: laid.papers,
        page: async (page, prefix, label) => (await svg({ ask: "page", of, page, prefix, label }))[0],
        ...drawnOnce(() => svg({ ask: "pages", of })),
        pdf: async (onPage) => {
          const made = await beside.ask({ ask: "pdf", of }, onPage).answer
          if (made?.kind !== "pdf") throw new Error("the PDF did not come")
          return made.bytes
        },
      }
    },
  }
}
