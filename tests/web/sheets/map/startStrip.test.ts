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
