import { drawPage } from "./drawPage"
import type { Page } from "./page"
import { svgPen } from "./svgPen"

/** The pages for the screen, one SVG document each: the very items the PDF prints. */
export const svgPages = (pages: readonly Page[]): string[] => pages.map(svgPage)

function svgPage(page: Page, index: number): string {
  const { widthMm, heightMm } = page.paper
  const { pen, markup } = svgPen(`page-${index + 1}`)
  drawPage(page, pen)
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${widthMm} ${heightMm}" role="group" aria-label="Page as printed">`,
    `<rect width="${widthMm}" height="${heightMm}" fill="#ffffff"/>`,
    markup(),
    "</svg>",
  ].join("\n")
}
