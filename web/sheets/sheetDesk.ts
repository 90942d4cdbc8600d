import type { Answered, Progress } from "../session/askBeside"
import { loadWords } from "../words/every/languages"
import { type Fonts, readFontFile } from "./pens/fontFile"
import type { Sheet } from "./pens/page"
import { svgPage, svgPages } from "./pens/svgPages"
import { systemLetters } from "./pens/systemLetters"
import { toPdf } from "./printPlan"
import { layOutSheet } from "./sheetKinds"
import type { SheetAnswer, SheetQuestion } from "./sheetNews"

/** The sheet laid out last; its pages are asked for one by one. */
let laid: { by: number; sheet: Sheet; fonts: Fonts } | null = null
const system = systemLetters()
const tellEveryMs = 100

const tell = (news: Answered<SheetAnswer>, transfer: Transferable[] = []) =>
  self.postMessage(news, { transfer })

/** Answers one question of the screen, by a message. */
export async function answerSheet(data: SheetQuestion & { number: number }) {
  const { number } = data
  try {
    const answer = data.ask === "sheet" ? await layOut(data, number) : draw(data, number)
    tell({ number, answer }, answer.kind === "pdf" ? [answer.bytes.buffer] : [])
  } catch (error) {
    tell({ number, fault: String(error) })
  }
}

type Question<Ask extends SheetQuestion["ask"]> = Extract<SheetQuestion, { ask: Ask }>

async function layOut({ wanted, fonts: bytes }: Question<"sheet">, number: number): Promise<SheetAnswer> {
  const { name, plan, options } = wanted
  const words = await loadWords(options.language)
  const fonts = { regular: readFontFile(bytes.regular), semibold: readFontFile(bytes.semibold), system }
  const sheet = layOutSheet(name, plan, { ...options, words, onStep: told(number) }, fonts)
  laid = { by: number, sheet, fonts }
  return { kind: "sheet", papers: sheet.pages.map(({ paper }) => paper) }
}

function draw(question: Question<"page" | "pages" | "pdf">, number: number): SheetAnswer {
  if (laid?.by !== question.of) throw new Error("the sheet has been overtaken")
  const { sheet, fonts } = laid
  switch (question.ask) {
    case "page":
      return { kind: "svg", svg: [svgPage(sheet.pages[question.page], question.prefix, question.label)] }
    case "pages":
      return { kind: "svg", svg: svgPages(sheet.pages) }
    case "pdf":
      return { kind: "pdf", bytes: Uint8Array.from(toPdf(sheet, fonts, told(number))) }
  }
}

/** Tells how far it has come, now and then. */
function told(number: number): Progress {
  let last = performance.now()
  return (done, count) => {
    if (performance.now() - last < tellEveryMs) return
    last = performance.now()
    tell({ number, at: { done, count } })
  }
}
