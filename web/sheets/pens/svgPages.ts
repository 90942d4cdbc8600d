import { drawPage } from "./drawPage"
import type { Page } from "./page"
import { escaped, svgPen } from "./svgPen"

/** The pages for the screen, one SVG document each: the very items the PDF prints. */
export const svgPages = (pages: readonly Page[]): string[] =>
  pages.map((page, i) => svgPage(page, `page-${i + 1}`, ""))

/** A page as an SVG document; `prefix` tells its names from those of others in the same document, `label` is read aloud. */
export function svgPage(page: Page, prefix: string, label: string): string {
  const { widthMm, heightMm } = page.paper
  const { pen, markup } = svgPen(prefix)
  drawPage(page, pen)
  const named = label ? ` role="group" aria-label="${escaped(label)}"` : ""
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${widthMm} ${heightMm}"${named}>`,
    `<rect width="${widthMm}" height="${heightMm}" fill="#ffffff"/>`,
    markup(),
    "</svg>",
  ].join("\n")
}
