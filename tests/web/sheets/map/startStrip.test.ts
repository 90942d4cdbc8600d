import { describe, expect, it } from "vitest"
import { isFoil } from "../../../../geometry/section/section"
import { kindOf } from "../../../../geometry/section/sectionKinds"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { startsIn } from "../../../../web/sheets/map/sideColumn"
import { type Start, startStrips } from "../../../../web/sheets/map/startStrip"
import { pressOf } from "../../../../web/sheets/setting/press"
import { british, sheetFonts } from "../../../support/sheetFonts"
import { everyLanguage } from "../../../support/words"

const whole = { from: 0, to: 1 }
const drawn = (start: Start, press = british) => {
  const [{ items }] = startStrips([start], 95, press)
  const [coat] = items.flatMap((item) => (item.kind === "area" ? [item.path.map(([x]) => x)] : []))
  return {
    from: Math.min(...coat),
    to: Math.max(...coat),
    texts: items.flatMap((item) => (item.kind === "text" ? [item.text] : [])),
  }
}

describe("where product starts, drawn on the map", () => {
  it("is as far from the scalp as it is on the head, and goes on as far as the strip", () => {
    for (const startMm of [0, 3, 6, 20]) {
      const { from, to, texts } = drawn({ startMm, strand: whole, foils: [1, 2] })
      expect(from).toBeCloseTo(startMm, 9)
      expect(to).toBe(42)
      expect(texts).toEqual([british.words.sheets.map.ruler.depth(startMm), "foils 1 and 2"])
    }
  })

  it("stops before the end where product does, and says to where, in every language", () => {
    for (const [language, words] of everyLanguage) {
      const press = pressOf({ words, language }, sheetFonts)
      const { from, to, texts } = drawn({ startMm: 6, strand: { from: 0.3, to: 0.6 }, foils: [4] }, press)
      expect(from).toBeGreaterThan(20)
      expect(to).toBeLessThan(42)
      expect(to).toBeGreaterThan(from)
      expect(texts[0].match(/\d+/g)).toEqual(["30", "60"])
    }
  })

  it("is cut off by a line at life size where hair lightened before may begin, and says so in every language", () => {
    const [first] = examplePlan().sections.filter(isFoil)
    const then = { ...first, rootDistanceMm: 20, strand: { from: 0, to: 1 } }
    const now = { ...then, rootDistanceMm: 6, strand: { from: 0, to: 0.1 } }
    const lightened = [{ on: "2026-03-09", level: 9, section: then }]
    const [start] = startsIn({ ...examplePlan(), date: "2026-05-18", sections: [now], lightened })
    for (const [language, words] of everyLanguage) {
      const [{ items }] = startStrips([start], 95, pressOf({ words, language }, sheetFonts))
      const uprights = items.flatMap((item) =>
        item.kind === "lines"
          ? item.paths.flatMap(([[x], [end]]) => (x === end ? [Number(x.toFixed(1))] : []))
          : [],
      )
      // Ten weeks at 10 mm a month, the least: 23.1 mm, from 20 mm.
      expect(uprights.sort((a, b) => a - b)).toEqual([0, 43.1])
      const hatched = items.flatMap((item) => (item.kind === "hatch" ? item.segments.map(([[x]]) => x) : []))
      expect(Math.min(...hatched)).toBeCloseTo(43.08, 2)
      const said = items.flatMap((item) => (item.kind === "text" ? [item.text] : [])).join(" ")
      expect(said).toContain("43–52")
    }
  })

  it("is shown for every foil of a plan, once", () => {
    const plan = examplePlan()
    const foils = plan.sections.filter(isFoil)
    const starts = startsIn(plan)
    expect(starts.flatMap((start) => start.foils).sort((a, b) => a - b)).toEqual(
      foils.map(({ mapNumber }) => mapNumber).sort((a, b) => a - b),
    )
    for (const { startMm, foils: numbers } of starts)
      for (const foil of foils.filter(({ mapNumber }) => numbers.includes(mapNumber)))
        expect(kindOf(foil).productStartMm(foil)).toBe(startMm)
  })
})
