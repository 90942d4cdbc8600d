import { jsPDF } from "jspdf"
import type { Fonts } from "./fontFile"
import { mmPerPt, type Page, type Paper, type Path, type Weight } from "./page"
import type { Pen, PenStyle } from "./pen"

export type About = { title: string; date: string; fileId: string }

const names: Record<Weight, string> = { regular: "PartlineSans-Regular", semibold: "PartlineSans-SemiBold" }

/** A PDF of one paper size: a pen for its page, another page, the finished file. Same input, same bytes. */
export function openPdf(paper: Paper, about: About, fonts: Fonts) {
  const pdf = new jsPDF({
    unit: "mm",
    format: [paper.widthMm, paper.heightMm],
    compress: true,
    floatPrecision: 3,
    putOnlyUsedFonts: true,
  })
  pdf.setCreationDate(`D:${about.date.replaceAll("-", "")}000000+00'00'`)
  pdf.setFileId(about.fileId)
  pdf.setLanguage("en-GB")
  pdf.setProperties({ title: about.title, creator: "Partline" })
  pdf.viewerPreferences({ DisplayDocTitle: true, PrintScaling: "None" })
  for (const weight of ["regular", "semibold"] as const) {
    pdf.addFileToVFS(`${weight}.ttf`, toBase64(fonts[weight].bytes))
    pdf.addFont(`${weight}.ttf`, names[weight], "normal", undefined, "Identity-H")
  }
  pdf.setLineCap("round")
  pdf.setLineJoin("round")
  return {
    pen: pdfPen(pdf),
    nextPage(page: Page) {
      pdf.addPage([page.paper.widthMm, page.paper.heightMm])
      pdf.setLineCap("round")
      pdf.setLineJoin("round")
    },
    bytes: () => new Uint8Array(pdf.output("arraybuffer")),
  }
}

function pdfPen(pdf: jsPDF): Pen {
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
    text: (text, [x, y], align) => void pdf.text(text, x, y, { align }),
    save: () => void pdf.saveGraphicsState(),
    restore: () => void pdf.restoreGraphicsState(),
  }
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
