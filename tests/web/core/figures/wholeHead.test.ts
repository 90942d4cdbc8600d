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
  it("has as many hairs as the chosen density, the head's mean, grows on all of it", () => {
    // The regions' factors are set about that mean on the mean woman's head; cells of 5 mm sum it to a thousandth.
    expect(whole.hairs.mid / (hair.densityPerCm2 * whole.areaCm2)).toBeCloseTo(1, 2)
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
