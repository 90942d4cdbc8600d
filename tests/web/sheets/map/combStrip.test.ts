import { describe, expect, it } from "vitest"
import { combStrip } from "../../../../web/sheets/map/combStrip"
import { depthsOf, stitchesIn } from "../../../../web/sheets/map/sideColumn"
import { stitchStrips } from "../../../../web/sheets/map/stitchStrip"
import { framePlan } from "../../../support/framePlan"
import { british } from "../../../support/sheetFonts"

describe("the comb at life size", () => {
  it("knows the depths of a plan and the foils that have them", () => {
    expect(depthsOf(framePlan).slice(0, 2)).toEqual([
      { depthMm: 2, foils: [1] },
      { depthMm: 3, foils: [3] },
    ])
  })

  it("has a spine of 50 mm and a long tooth at each depth", () => {
    const { items } = combStrip(
      [
        { depthMm: 3.5, foils: [1, 4] },
        { depthMm: 12, foils: [2] },
      ],
      90,
      british,
    )
    const spine = items.find((item) => item.kind === "area")
    const xs = spine?.path.map(([x]) => x) ?? []
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([0, 50])
    const teeth = items.filter((item) => item.kind === "lines").find(({ weightPt }) => weightPt > 1)
    expect(teeth?.paths.map(([[x]]) => x)).toEqual([3.5, 12])
    const words = items.flatMap((item) => (item.kind === "text" ? [item.text] : []))
    expect(words).toEqual(expect.arrayContaining(["3.5 mm", "foils 1 and 4", "12 mm", "foil 2"]))
  })

  it("shows stitches at their true width, gap and dip", () => {
    const [row] = stitchStrips(stitchesIn(framePlan), 90, british)
    const teeth = row.items.flatMap((item) => (item.kind === "area" ? [item.path] : []))
    // 3 mm taken, 2 mm left, dip 5 mm: from 0 to 3, from 5 to 8, ...
    expect(teeth[0][2]).toEqual([3, 5])
    expect(teeth[1].map(([x]) => x)).toEqual([5, 8, 8, 5])
  })
})
