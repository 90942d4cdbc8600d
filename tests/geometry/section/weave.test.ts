import { describe, expect, it } from "vitest"
import { layStitches } from "../../../geometry/section/weave"

const stitching = { stitchMm: 3, gapMm: 5, dipMm: 4, depthMm: { start: 10, end: 10 } }

describe("stitches along a parting", () => {
  it("stand at their true pitch, centred", () => {
    // 50 mm: six stitches of 3 and five gaps of 5 are 43 mm, so 3.5 mm is left at each end.
    const laid = layStitches(stitching, 50)
    expect(laid.map(({ fromMm }) => fromMm)).toEqual([3.5, 11.5, 19.5, 27.5, 35.5, 43.5])
    expect(laid[5].toMm).toBe(46.5)
    expect(laid[0].depthShare).toBe(0.4)
  })

  it("fill a parting they just fit", () => {
    expect(layStitches(stitching, 43)).toHaveLength(6)
    expect(layStitches(stitching, 42.9)).toHaveLength(5)
  })

  it("come down to one, no wider than the parting", () => {
    expect(layStitches(stitching, 2)).toEqual([{ fromMm: 0, toMm: 2, depthShare: 0.4 }])
  })

  it("reach farther across where the band is shallow", () => {
    const wedge = layStitches({ ...stitching, depthMm: { start: 4, end: 16 } }, 50)
    expect(wedge[0].depthShare).toBeCloseTo(4 / (4 + 12 * 0.1), 12)
    expect(wedge[5].depthShare).toBeCloseTo(4 / (4 + 12 * 0.9), 12)
  })
})
