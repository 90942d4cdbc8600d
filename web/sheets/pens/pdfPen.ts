import { jsPDF } from "jspdf"
import { remembered } from "../../core/memory/remembered"
import type { Fonts } from "./fontFile"
import { mmPerPt, type Page, type RunItem, type Sheet, type Weight } from "./page"
import { fillInk, strokeInk, traced } from "./pdfOperators"
import { type StampInternal, stampsOf } from "./pdfStamps"
import { type PdfInternal, tagsOf } from "./pdfTags"
import type { Pen, PenStyle } from "./pen"
import { toPng } from "./png"

const names: Record<Weight, string> = { regular: "PartlineSans-Regular", semibold: "PartlineSans-SemiBold" }

/** A PDF of one paper size: a pen for its page, another page, the finished file. Same input, same bytes. */
export function openPdf({ pages: [{ paper }], title, date, language }: Sheet, fileId: string, fonts: Fonts) {
  const pdf = new jsPDF({
    unit: "mm",
    format: [paper.widthMm, paper.heightMm],
    compress: true,
    floatPrecision: 3,
    putOnlyUsedFonts: true,
  })
  const created = creationDates(date)
  pdf.setCreationDate(created.standIn)
  pdf.setFileId(fileId)
  pdf.setLanguage(language as Parameters<jsPDF["setLanguage"]>[0])
  pdf.setProperties({ title: title, creator: "Partline" })
  pdf.viewerPreferences({ DisplayDocTitle: true, PrintScaling: "None" })
  for (const weight of ["regular", "semibold"] as const) {
    pdf.addFileToVFS(`${weight}.ttf`, toBase64(fonts[weight].bytes))
    pdf.addFont(`${weight}.ttf`, names[weight], "normal", undefined, "Identity-H")
  }
  pdf.setLineCap("round")
  pdf.setLineJoin("round")
  const tags = tagsOf(pdf.internal as unknown as PdfInternal)
  const stamps = stampsOf(pdf.internal as unknown as StampInternal)
  const { startPage, ...pen } = pdfPen(pdf, fonts, paper.heightMm)
  return {
    pen: {
      ...pen,
      stamp: (stamp) => stamps.print(stamp, paper.heightMm),
      mark: tags.mark,
    } satisfies Pen,
    nextPage(page: Page) {
      tags.close()
      pdf.addPage([page.paper.widthMm, page.paper.heightMm])
      pdf.setLineCap("round")
      pdf.setLineJoin("round")
      startPage()
    },
    bytes() {
      tags.close()
      return replaced(new Uint8Array(pdf.output("arraybuffer")), created.standIn, created.wanted)
    },
  }
}

/** The day as a PDF writes it. jsPDF takes the years 1970 to 2037 alone: for others one of as many letters stands in. */
function creationDates(date: string) {
  const wanted = `D:${date.replaceAll("-", "")}000000+00'00'`
  const year = Number(date.slice(0, 4))
  return { wanted, standIn: year >= 1970 && year <= 2037 ? wanted : "D:20000229000000+00'00'" }
}

/** A file with one text in it for another of the same length. */
function replaced(bytes: Uint8Array, from: string, to: string): Uint8Array {
  if (from === to) return bytes
  const letters = new TextEncoder().encode(from)
  const at = bytes.findIndex((_, i) => letters.every((letter, k) => bytes[i + k] === letter))
  if (at >= 0) bytes.set(new TextEncoder().encode(to), at)
  return bytes
}

/** Lines and areas are written as they stand in the file: the library would weigh every point of them. */
function pdfPen(pdf: jsPDF, fonts: Fonts, heightMm: number): Omit<Pen, "stamp"> & { startPage(): void } {
  const { write } = pdf.internal as unknown as PdfInternal
  let style: PenStyle = { ink: "#000000" }
  let set: Inks = nothingSet
  const outside: Inks[] = []
  const ink = (kind: keyof Inks, wanted: string) => {
    if (set[kind] !== wanted) write(wanted)
    set = { ...set, [kind]: wanted }
  }
  return {
    style(next) {
      style = next
    },
    path(paths, paint) {
      const isClosed = paint !== "stroke"
      const drawn = paths.map((path) => `${traced(path, heightMm)}${isClosed ? " h" : ""}`).join(" ")
      if (paint === "fill" || !style.line) ink("fill", fillInk(style.ink))
      else ink("stroke", strokeInk(style.ink, style.line))
      write(`${drawn} ${paint === "fill" ? "f" : "S"}`)
    },
    clip: (path) => write(`${traced(path, heightMm)} h W n`),
    // A space after a line, that it is not read as one word with the next.
    text(text, [x, y], align, goesOn) {
      setType(pdf, style)
      pdf.text(align === "left" && !goesOn ? `${text} ` : text, x, y, { align })
      set = nothingSet
    },
    run(run) {
      drawRun(pdf, run, fonts)
      set = nothingSet
    },
    save() {
      outside.push(set)
      pdf.saveGraphicsState()
    },
    restore() {
      set = outside.pop() ?? nothingSet
      pdf.restoreGraphicsState()
    },
    startPage() {
      set = nothingSet
    },
  }
}

/** What the page is drawn with at the moment; the library sets its own with each text. */
type Inks = { fill: string; stroke: string }
const nothingSet: Inks = { fill: "", stroke: "" }

/** A picture of letters, under a space that is not seen: what stands for them is found where text is looked for. */
function drawRun(pdf: jsPDF, run: RunItem, { system }: Fonts) {
  if (!system) throw new Error(`there is nothing to draw "${run.text}" with`)
  const { text, at, sizePt, weight, ink } = run
  const em = sizePt * mmPerPt
  const { pixels, leftEm, topEm, widthEm, heightEm } = system.picture(text, run)
  pdf.addImage({
    imageData: toPng(pixels),
    format: "PNG",
    compression: "FAST",
    x: at[0] + leftEm * em,
    y: at[1] + topEm * em,
    width: widthEm * em,
    height: heightEm * em,
    // The same letters once more are the same picture.
    alias: [weight, sizePt, ink, text].join(" "),
  })
  pdf.setFont(names[weight], "normal").setFontSize(sizePt)
  pdf.text(" ", at[0], at[1], { renderingMode: "invisible" })
}

function setType(pdf: jsPDF, { ink, type }: PenStyle) {
  pdf.setTextColor(ink)
  if (type) pdf.setFont(names[type.weight], "normal").setFontSize(type.sizePt)
}

/** The library takes fonts as base64, in pieces short enough for one call; once for all the files of a class. */
const toBase64 = remembered((bytes: Uint8Array): string => {
  let binary = ""
  for (let i = 0; i < bytes.length; i += 8192) binary += String.fromCharCode(...bytes.subarray(i, i + 8192))
  return btoa(binary)
})
