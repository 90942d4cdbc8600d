import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs"
import { describe, expect, it } from "vitest"
import { sheetNames } from "../../../presets/sheets/sheetNames"
import { printPlan, toPdf } from "../../../web/sheets/printPlan"
import { layOutSheet } from "../../../web/sheets/sheetKinds"
import { fontsOfScreen } from "../../support/fakeLetters"
import { servedPlan } from "../../support/servedPlan"
import { readFont, sheetOptions } from "../../support/sheetFonts"

type Node = { role?: string; type?: string; id?: string; alt?: string; children?: Node[] }
const flat = (node: Node): Node[] => [node, ...(node.children ?? []).flatMap(flat)]

/** What a reader's program is given of a page, and the marks in the order of the page's content. */
async function readMarks(data: Uint8Array) {
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
    const { pages, info, metadata } = await readMarks(
      await printPlan(servedPlan(), { sheet, paper: "a4", mirror: false, language: "en-US" }, readFont),
    )
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

it("says letters that are drawn as a picture, within the line that they stand in", async () => {
  const plan = { ...servedPlan(), name: "初回 Frame", client: { initials: "山田" } }
  const sheet = layOutSheet("take-home", plan, sheetOptions(), fontsOfScreen)
  const { pages } = await readMarks(toPdf(sheet, fontsOfScreen))
  const [{ nodes, marks }] = pages
  expect(nodes.flatMap(({ type, id }) => (type === "content" && id ? [id] : []))).toEqual(marks)
  const heading = nodes.find(({ role }) => role === "H1")
  expect(heading?.children?.map(({ role, alt }) => [role, alt])).toEqual([
    ["Span", "初回"],
    [undefined, undefined],
  ])
  const spoken = nodes.filter(({ role }) => role === "Span").map(({ alt }) => alt)
  expect(spoken).toEqual(["初回", "山田"])
})
