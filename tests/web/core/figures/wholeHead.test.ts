import { describe, expect, it } from "vitest"
import { makeHeadFromAxes } from "../../../../geometry/scalp/head"
import { zoneAreas } from "../../../../geometry/scalp/zones"
import { newPlan } from "../../../../web/core/document/newPlan"
import { wholeHead } from "../../../../web/core/figures/wholeHead"

const head = makeHeadFromAxes([1, 1, 1], "round")
const { hair } = newPlan(new Date())
const whole = wholeHead(head, hair)

describe("the whole head", () => {
  it("has the area of its zones, summed four times as finely", () => {
    const { top, left, right, back } = zoneAreas(head, 0.015)
    expect(Math.abs(whole.areaCm2 / (top + left + right + back) - 1)).toBeLessThan(0.01)
  })
  it("has no more hairs than the chosen density on all of it, and no fewer than its sparsest region's", () => {
    // The regions' factors lie between 0.7 (the hairline band) and 1.
    expect(whole.hairs.mid).toBeLessThan(hair.densityPerCm2 * whole.areaCm2)
    expect(whole.hairs.mid).toBeGreaterThan(0.7 * hair.densityPerCm2 * whole.areaCm2)
  })
  it("has half again as many hairs at half again the density, on the same area", () => {
    const dense = wholeHead(head, { ...hair, densityPerCm2: 1.5 * hair.densityPerCm2 })
    expect(dense.hairs.mid / whole.hairs.mid).toBeCloseTo(1.5, 9)
    expect(dense.areaCm2).toBe(whole.areaCm2)
  })
  it("grows with the square of its size", () => {
    const large = wholeHead(makeHeadFromAxes([1.05, 1.05, 1.05], "round"), hair)
    expect(large.areaCm2 / whole.areaCm2).toBeCloseTo(1.05 ** 2, 2)
  })
})
