import { describe, expect, it } from "vitest"
import { screenPoint } from "../../../../geometry/surface/frames"
import { fingerDown, fingerMoved, fingersTapped, noTap } from "../../../../web/canvas/hand/fingerTap"

const two = fingerDown(
  fingerDown(noTap, 1, screenPoint(50, 50), 1000, true),
  2,
  screenPoint(120, 60),
  1040,
  false,
)

describe("a tap of several fingers", () => {
  it("is counted when all are up soon", () => {
    expect(fingersTapped(two, 1200)).toBe(2)
    expect(fingersTapped(fingerDown(two, 3, screenPoint(80, 90), 1060, false), 1200)).toBe(3)
  })

  it("forgives a tremor, not a pinch", () => {
    expect(fingersTapped(fingerMoved(two, 1, screenPoint(56, 54)), 1200)).toBe(2)
    expect(fingersTapped(fingerMoved(two, 1, screenPoint(50, 80)), 1200)).toBe(0)
  })

  it("is no rest of the hand", () => {
    expect(fingersTapped(two, 1900)).toBe(0)
  })

  it("begins anew with the next first finger", () => {
    expect(fingersTapped(fingerDown(two, 7, screenPoint(10, 10), 3000, true), 3100)).toBe(1)
  })
})
