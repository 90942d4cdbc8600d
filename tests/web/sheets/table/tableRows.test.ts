import { describe, expect, it } from "vitest"
import { measured } from "../../../../web/core/figures/measured"
import { tableRows } from "../../../../web/sheets/table/tableRows"
import { framePlan } from "../../../support/framePlan"
import { british } from "../../../support/sheetFonts"

const rows = tableRows(measured(framePlan), british)

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

  it("point the arrow down, and the other way on the other side of the head", () => {
    const [right, left] = [rows[0].fall, rows[3].fall]
    expect(right?.[1]).toBeGreaterThan(0)
    expect(left?.[1]).toBeCloseTo(right?.[1] ?? 0, 6)
    expect(left?.[0]).toBeCloseTo(-(right?.[0] ?? 0), 6)
  })
})
