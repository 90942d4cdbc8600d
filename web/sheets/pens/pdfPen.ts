import { jsPDF } from "jspdf"
import type { Fonts } from "./fontFile"
import { mmPerPt, type Page, type Path, type RunItem, type Sheet, type Weight } from "./page"
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
  return {
    pen: {
      ...pdfPen(pdf, fonts),
      stamp: (stamp) => stamps.print(stamp, paper.heightMm),
      mark: tags.mark,
    } satisfies Pen,
    nextPage(page: Page) {
      tags.close()
      pdf.addPage([page.paper.widthMm, page.paper.heightMm])
      pdf.setLineCap("round")
      pdf.setLineJoin("round")
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

function pdfPen(pdf: jsPDF, fonts: Fonts): Omit<Pen, "stamp"> {
  return {
    style: (style) => setStyle(pdf, style),
    path(paths, paint) {
      for (const path of paths) trace(pdf, path, paint !== "stroke")
      if (paint === "fill") pdf.fill()
      else pdf.stroke()
    },
    clip(path) {
      trace(pdf, path, true)
      pdf.clip().discardPath()
    },
    // A space after a line, that it is not read as one word with the next.
    text: (text, [x, y], align, goesOn) =>
      void pdf.text(align === "left" && !goesOn ? `${text} ` : text, x, y, { align }),
    run: (run) => drawRun(pdf, run, fonts),
    save: () => void pdf.saveGraphicsState(),
    restore: () => void pdf.restoreGraphicsState(),
  }
}

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

function setStyle(pdf: jsPDF, { ink, line, type }: PenStyle) {
  pdf.setFillColor(ink)
  pdf.setTextColor(ink)
  if (type) pdf.setFont(names[type.weight], "normal").setFontSize(type.sizePt)
  if (!line) return
  pdf.setDrawColor(ink)
  pdf.setLineWidth(line.weightPt * mmPerPt)
  pdf.setLineDashPattern(
    line.dashPt.map((pt) => pt * mmPerPt),
    0,
  )
}

function trace(pdf: jsPDF, [first, ...rest]: Path, closed: boolean) {
  pdf.moveTo(first[0], first[1])
  for (const [x, y] of rest) pdf.lineTo(x, y)
  if (closed) pdf.close()
}

/** The library takes fonts as base64, in pieces short enough for one call. */
function toBase64(bytes: Uint8Array): string {
  let binary = ""
  for (let i = 0; i < bytes.length; i += 8192) binary += String.fromCharCode(...bytes.subarray(i, i + 8192))
  return btoa(binary)
}
