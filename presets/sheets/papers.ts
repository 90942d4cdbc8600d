/** Paper in a printer, mm: A4 by ISO 216, Letter by ANSI/ASME Y14.1 (8.5 by 11 inches). */
export const papers = {
  a4: { name: "A4", widthMm: 210, heightMm: 297, marginMm: 8 },
  letter: { name: "Letter", widthMm: 215.9, heightMm: 279.4, marginMm: 8 },
} as const
export type PaperName = keyof typeof papers
export const paperNames = Object.keys(papers) as PaperName[]
