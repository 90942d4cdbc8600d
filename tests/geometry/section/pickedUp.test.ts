import { describe, expect, it } from "vitest"
import { makeHeadFromAxes } from "../../../geometry/scalp/head"
import { bandShape } from "../../../geometry/section/bandShape"
import { bandAreaCm2 } from "../../../geometry/section/cellAreas"
import { measureSection } from "../../../geometry/section/measureSection"
import { pickedShape, stitchedColumns, stitchedShare } from "../../../geometry/section/pickedUp"
import type { Section } from "../../../geometry/section/section"
import { surfacePoint } from "../../../geometry/surface/frames"
import { tradeFigures } from "../../../presets/formula/tradeFigures"
import { bandOf, evenHair, sliceOf, weaveOf } from "../../support/sections"

const head = makeHeadFromAxes([1, 1, 1], "round")
const parting = [surfacePoint(-0.35, 0.3), surfacePoint(0.35, 0.3)]
const weave = (depthMm: number, changes: Partial<Section<"weave">> = {}) =>
  weaveOf(bandOf(parting, depthMm), { stitchMm: 3, gapMm: 5, dipMm: 4, ...changes })
const measure = (section: Section) => measureSection(section, head, evenHair(30), tradeFigures)

describe("the hair a weave picks up", () => {
  it("is the same however much deeper than the dip the band is", () => {
    const [shallow, ...deeper] = [4, 8, 20].map((depthMm) => measure(weave(depthMm)))
    for (const figures of deeper)
      for (const amount of ["hairs", "hairG", "strandAreaCm2"] as const)
        expect(figures[amount]).toBe(shallow[amount])
    expect(deeper[1].areaCm2).toBeGreaterThan(4 * shallow.areaCm2)
  })

  it("covers a ribbon as wide as its stitches, whatever the dip: width x length x faces", () => {
    for (const dipMm of [2, 4, 8]) {
      const { partingMm, strandAreaCm2 } = measure(weave(8, { dipMm }))
      const stitched = stitchedShare(weave(8), partingMm) * partingMm
      // 30 cm of hair, coated from the scalp to the ends on two faces.
      expect(strandAreaCm2 / ((stitched / 10) * 30 * 2)).toBeCloseTo(1, 9)
    }
  })

  it("is that of the stitches drawn: one of 3 mm on a parting of 10 is 3 of 10, not 3 of 8", () => {
    expect(stitchedShare(weave(4), 10)).toBeCloseTo(0.3, 12)
    // Two stitches of 3 and a gap of 5 fit 11 mm.
    expect(stitchedShare(weave(4), 11)).toBeCloseTo(6 / 11, 12)
    expect(stitchedShare(sliceOf(bandOf(parting)), 11)).toBe(1)
  })

  it("fills the columns that lie within its stitches, to the width of all stitches together", () => {
    const shape = pickedShape(weave(8), head)
    const columns = stitchedColumns(weave(8), shape)
    const widthMm = columns.reduce(
      (sum, share, i) => sum + share * (shape.alongMm[i + 1] - shape.alongMm[i]),
      0,
    )
    const partingMm = shape.alongMm[shape.stations - 1]
    expect(widthMm).toBeCloseTo(stitchedShare(weave(8), partingMm) * partingMm, 9)
    expect(Math.min(...columns)).toBe(0)
    expect(Math.max(...columns)).toBeGreaterThan(0.75)
  })

  it("reaches no deeper than the dip, nor than a band that runs to nothing", () => {
    const wedge = weave(10, { depthMm: { start: 0, end: 10 } })
    const { depthMm, stations } = pickedShape(wedge, head)
    expect(depthMm[0]).toBe(0)
    expect(depthMm[stations - 1]).toBe(4)
    // A triangle 0 to 10 mm deep has an area of 5 a mm; within 4 mm of the parting 4 - 4 x 4 / (2 x 10) = 3.2.
    const share = bandAreaCm2(pickedShape(wedge, head)) / bandAreaCm2(bandShape(wedge, head))
    expect(share).toBeCloseTo(3.2 / 5, 2)
  })
})
