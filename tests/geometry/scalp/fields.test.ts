import { describe, expect, it } from "vitest"
import { add, cut, ellipsoid, paired, rod, sculpt } from "../../../geometry/scalp/fields"

const ball = ellipsoid([1, 2, 3], [5, 5, 5])

describe("the parts of a sculpture", () => {
  it("a ball has true distances in and out", () => {
    expect(ball(1, 2, 11)).toBeCloseTo(3, 12)
    expect(ball(1, 4, 3)).toBeCloseTo(-3, 12)
    expect(ball(1, 2, 3)).toBe(-5)
  })

  it("an ellipsoid ends where its axes do", () => {
    const body = ellipsoid([0, 0, 0], [3, 5, 7])
    expect(body(3, 0, 0)).toBeCloseTo(0, 12)
    expect(body(0, -5, 0)).toBeCloseTo(0, 12)
    expect(body(0, 0, 9)).toBeCloseTo(2, 12)
  })

  it("a rod has its own radius at each end", () => {
    const cone = rod([0, 0, 0], 2, [10, 0, 0], 4)
    expect(cone(-5, 0, 0)).toBeCloseTo(3, 12)
    expect(cone(17, 0, 0)).toBeCloseTo(3, 12)
    expect(cone(5, 0, 6)).toBeCloseTo(3, 12)
  })

  it("a pair is the same on both sides, without a crease between", () => {
    const pair = paired(ellipsoid([6, 0, 0], [8, 8, 8]))
    expect(pair(-9, 1, 2)).toBe(pair(9, 1, 2))
    expect((pair(1e-4, 3, 8) - pair(0, 3, 8)) / 1e-4).toBeCloseTo(0, 4)
  })
})

describe("a sculpture", () => {
  it("adds with a soft seam and cuts with a soft rim", () => {
    const floor = (_x: number, _y: number, z: number) => z
    const wall = (x: number) => x
    // Where both are 0, the seam lies a quarter of the reach outside, the rim a quarter inside.
    expect(sculpt(floor, add(wall, 8))(0, 0, 0)).toBeCloseTo(-2, 12)
    expect(sculpt(floor, cut(wall, 8))(0, 0, 0)).toBeCloseTo(2, 12)
    // Beyond the reach nothing is changed.
    expect(sculpt(floor, add(wall, 8))(20, 0, 3)).toBe(3)
    expect(sculpt(floor, cut(wall, 8))(20, 0, -3)).toBe(-3)
  })
})
