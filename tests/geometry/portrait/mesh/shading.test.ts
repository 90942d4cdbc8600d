import { describe, expect, it } from "vitest"
import { drawHead } from "../../../../geometry/portrait/outline"
import { fixedViews } from "../../../../geometry/surface/views"

const { shade } = drawHead([1, 1, 1], fixedViews.front, 2)
const alphaAt = (x: number, y: number) =>
  shade.alpha[Math.floor((shade.top - y) / 2) * shade.width + Math.floor((x - shade.left) / 2)]

describe("the wash of the head from in front", () => {
  it("has one alpha a pixel, none off the head", () => {
    expect(shade.alpha).toHaveLength(shade.width * shade.height)
    expect(alphaAt(-shade.left - 1, shade.top - 1)).toBe(0)
  })

  it("is the same on both sides", () => {
    for (let y = -150; y < 120; y += 7)
      for (let x = 1; x < 80; x += 6) expect(Math.abs(alphaAt(x, y) - alphaAt(-x, y))).toBeLessThanOrEqual(2)
  })

  it("leaves the brow light, darkens beneath the chin, and fades where the neck ends", () => {
    expect(alphaAt(1, 75)).toBeLessThan(25)
    expect(alphaAt(1, -106)).toBeGreaterThan(2 * alphaAt(1, 75))
    expect(alphaAt(1, -157)).toBeLessThan(10)
  })
})
