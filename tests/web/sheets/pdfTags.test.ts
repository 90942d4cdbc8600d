import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs"
import { describe, expect, it } from "vitest"
import { sheetNames } from "../../../presets/sheets/sheetNames"
import { printPlan } from "../../../web/sheets/printPlan"
import { servedPlan } from "../../support/servedPlan"
import { readFont } from "../../support/sheetFonts"

type Node = { role?: string; type?: string; id?: string; alt?: string; children?: Node[] }
const flat = (node: Node): Node[] => [node, ...(node.children ?? []).flatMap(flat)]

/** What a reader's program is given of a page, and the marks in the order of the page's content. */
async function readMarks(sheet: (typeof sheetNames)[number]) {
  const data = await printPlan(
    servedPlan(),
    { sheet, paper: "a4", mirror: false, language: "en-US" },
    readFont,
  )
  const pdf = await getDocument({ data }).promise
  const pages = []
  for (let number = 1; number <= pdf.numPages; number++) {
    const page = await pdf.getPage(number)
    const { items } = await page.getTextContent({ includeMarkedContent: true })
    const marks = items.flatMap((item) =>
      "type" in item && item.type === "beginMarkedContentProps" && item.id ? [item.id] : [],
    )
    pages.push({ nodes: flat((await page.getStructTree()) as Node), marks })
  }
  return { pages, info: await pdf.getMarkInfo(), metadata: await pdf.getMetadata() }
}

// Read back by pdf.js, a reader of its own; the tags are those of ISO 32000-1, 14.8.
describe.each(sheetNames)("the tags of the sheet %s", (sheet) => {
  it("say what each piece is, in the order in which it stands, with words for every figure", async () => {
    const { pages, info, metadata } = await readMarks(sheet)
    expect(info?.Marked).toBe(true)
    expect(metadata.info).toMatchObject({ Language: "en-US", Title: servedPlan().name })
    for (const { nodes, marks } of pages) {
      const told = nodes.flatMap(({ type, id }) => (type === "content" && id ? [id] : []))
      expect(told.length).toBeGreaterThan(4)
      expect(told).toEqual(marks)
      expect(nodes.filter(({ role }) => role === "H1")).toHaveLength(1)
      for (const figure of nodes.filter(({ role }) => role === "Figure"))
        expect(figure.alt).toMatch(/^Drawing of the head: /)
    }
    expect(pages[0].nodes.some(({ role }) => role === "Figure")).toBe(sheet !== "record")
  })
})
