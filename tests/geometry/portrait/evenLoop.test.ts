import { describe, expect, it } from "vitest"
import { evenLoop } from "../../../geometry/portrait/evenLoop"

/** A circle of 41 mm radius whose points crowd together on one side; depth follows x, `bulge` is 3 everywhere. */
const circle = Array.from({ length: 700 }, (_, i) => {
  const angle = 2 * Math.PI * (i / 700) ** 2
  const [outX, outY] = [Math.cos(angle), Math.sin(angle)]
  return { x: 41 * outX, y: 41 * outY, depth: 7 - 41 * outX, outX, outY, bulge: 3 }
})
const loop = evenLoop(circle, 1.2)

describe("an even loop", () => {
  it("has its points the asked distance apart, over the seam too", () => {
    // 2 pi 41 = 257.6 mm round: 215 steps of 1.2 mm.
    expect(loop).toHaveLength(215)
    loop.forEach(({ x, y }, i) => {
      const next = loop[(i + 1) % loop.length]
      expect(Math.hypot(next.x - x, next.y - y)).toBeCloseTo(1.2, 1)
    })
  })

  it("stays on the circle and carries what the points carry", () => {
    // Two smoothings pull a circle of radius r in by s^2 / 4r each: 0.018 mm together.
    for (const { x, y, depth, bulge } of loop) {
      expect(Math.hypot(x, y)).toBeCloseTo(40.98, 1)
      expect(depth).toBeCloseTo(7 - x, 9)
      expect(bulge).toBeCloseTo(3, 9)
    }
  })
})
