import { describe, expect, it } from "vitest"
import type { Foil } from "../../../../geometry/section/section"
import { type Measured, measured } from "../../../../web/core/figures/measured"
import { type Press, pressOf } from "../../../../web/sheets/setting/press"
import { foilTable } from "../../../../web/sheets/table/foilTable"
import { tableRows } from "../../../../web/sheets/table/tableRows"
import { framePlan } from "../../../support/framePlan"
import { british, sheetFonts } from "../../../support/sheetFonts"
import { everyLanguage } from "../../../support/words"

const rows = tableRows(measured(framePlan), british)

/** What stands under the table, without its spaces. */
const tablesKey = (figures: Measured, press: Press) =>
  foilTable(figures, 194, press)
    .total.items.map((item) => (item.kind === "text" ? item.text : ""))
    .join("")
    .replace(/\s/g, "")

describe("the rows of the table", () => {
  it("count the order of application over foils only", () => {
    expect(rows.map(({ text }) => text.order)).toEqual(["1", "2", undefined, "3"])
  })

  it("give both depths of a wedge", () => {
    expect(rows.map(({ text }) => text.depthMm)[0]).toBe("2–3.5")
  })

  it("name side, kind and direction in the trade's words", () => {
    expect(rows[1].text).toMatchObject({
      side: "right",
      kind: "Weave 3/2",
      direction: "parallel",
      start: "6",
    })
    expect(rows[3].text).toMatchObject({ side: "left", kind: "Slice", mix: "B" })
  })

  it("say where product starts, and to where, on a part of the strand as well", () => {
    const startOf = (foil: Partial<Foil>, press: Press) => {
      const [first, ...others] = framePlan.sections
      const plan = { ...framePlan, sections: [{ ...first, ...foil } as Foil, ...others] }
      return tableRows(measured(plan), press)[0].text.start
    }
    expect(startOf({ rootDistanceMm: 9 }, british)).toBe("9")
    expect(startOf({ rootDistanceMm: 3, strand: { from: 0, to: 0.2 } }, british)).toBe("3 to 20%")
    expect(startOf({ strand: { from: 0.3, to: 1 } }, british)).toBe("30%")
    expect(startOf({ strand: { from: 0.3, to: 0.6 } }, british)).toBe("30% to 60%")
    for (const [language, words] of everyLanguage) {
      const press = pressOf({ words, language }, sheetFonts)
      const said = startOf({ strand: { from: 0.3, to: 0.6 } }, press) ?? ""
      expect(said.match(/\d+/g)).toEqual(["30", "60"])
      const key = tablesKey(measured(framePlan), press)
      expect(key).toContain(words.sheets.map.table.arrows.replace(/\s/g, ""))
    }
  })

  it("point the arrow down, and the other way on the other side of the head", () => {
    const [right, left] = [rows[0].fall, rows[3].fall]
    expect(right?.[1]).toBeGreaterThan(0)
    expect(left?.[1]).toBeCloseTo(right?.[1] ?? 0, 6)
    expect(left?.[0]).toBeCloseTo(-(right?.[0] ?? 0), 6)
  })
})
