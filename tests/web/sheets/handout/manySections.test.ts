import { describe, expect, it } from "vitest"
import { blocksOf } from "../../../../web/sheets/handout/earlierSections"
import { svgPage } from "../../../../web/sheets/pens/svgPages"
import { toPdf } from "../../../../web/sheets/printPlan"
import { layOutSheet } from "../../../../web/sheets/sheetKinds"
import { busyPlan } from "../../../support/busyPlan"
import { processorMs } from "../../../support/processorMs"
import { sheetFonts, sheetOptions } from "../../../support/sheetFonts"

const lay = (count: number) => layOutSheet("technique", busyPlan(count), sheetOptions(), sheetFonts)

describe("a handout of many sections", () => {
  it("draws what is done before a step in blocks that follow each other", () => {
    expect(blocksOf(0)).toEqual([])
    expect(blocksOf(13)).toEqual([
      [0, 8],
      [8, 4],
      [12, 1],
    ])
    for (let count = 0; count < 70; count++) {
      const blocks = blocksOf(count)
      let end = 0
      for (const [from, size] of blocks) {
        // Each begins at a multiple of its size, so that the next step finds it made.
        expect([from, from % size]).toEqual([end, 0])
        end += size
      }
      expect(end).toBe(count)
    }
  })

  it("grows with its sections, not with their square", () => {
    const [few, many] = [20, 80].map((count) => toPdf(lay(count), sheetFonts).length - fonts)
    expect(many / few).toBeLessThan(5)
  }, 120_000)

  it("keeps what is drawn often once on each page of the screen", () => {
    const { pages } = lay(80)
    const svg = svgPage(pages[pages.length - 4], "page", "")
    const ids = [...svg.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id)
    expect(new Set(ids).size).toBe(ids.length)
    const used = [...svg.matchAll(/<use href="#([^"]+)"/g)].map(([, id]) => id)
    expect(used.filter((id) => !ids.includes(id))).toEqual([])
    expect(used.length).toBeGreaterThan(new Set(used).size)
  })

  it("of 200 is laid out and printed within 10 seconds of this process's own time", async () => {
    const plan = busyPlan(200)
    const ms = await processorMs(() =>
      toPdf(layOutSheet("technique", plan, sheetOptions(), sheetFonts), sheetFonts),
    )
    expect(ms).toBeLessThan(10_000)
  }, 120_000)
})

/** What both weights of the typeface take up in every file. */
const fonts = 40_000
