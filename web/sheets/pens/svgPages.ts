import { escaped } from "../../drawing/escaped"
import { drawPage } from "./drawPage"
import type { Page } from "./page"
import { type Stamps, svgPen } from "./svgPen"

/** All pages for one document: the very items the PDF prints. A drawing that comes again is written where it comes first. */
export function svgPages(pages: readonly Page[]): string[] {
  const stamps: Stamps = new Map()
  return pages.map((page, i) => svgPage(page, `page-${i + 1}`, "", stamps))
}

/** A page as an SVG document; `prefix` tells its names from those of others in the same document, `label` is read aloud. */
export function svgPage(page: Page, prefix: string, label: string, stamps: Stamps = new Map()): string {
  const { widthMm, heightMm } = page.paper
  const { pen, markup } = svgPen(prefix, stamps)
  drawPage(page, pen)
  const named = label ? ` role="group" aria-label="${escaped(label)}"` : ""
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${widthMm} ${heightMm}"${named}>`,
    `<rect width="${widthMm}" height="${heightMm}" fill="#ffffff"/>`,
    markup(),
    "</svg>",
  ].join("\n")
}
