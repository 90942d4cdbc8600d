import { describe, expect, it } from "vitest"
import { headDistance } from "../../../geometry/scalp/headDistanceField"
import { headSurface } from "../../../geometry/scalp/headSurface"
import { surfacePoint } from "../../../geometry/surface/frames"

const surface = headSurface([1, 1, 1])

describe("the shape of the head", () => {
  it("is the same on both sides", () => {
    for (const [x, y, z] of [
      [44, 71, 12],
      [9, 97, -24],
      [61, -33, -41],
    ])
      expect(headDistance(-x, y, z)).toBe(headDistance(x, y, z))
  })

  it("has no tunnel: its middle is solid from the brow to the chin and down the neck", () => {
    for (let z = 120; z > -190; z -= 2) {
      const inside = Array.from({ length: 300 }, (_, i) => headDistance(0, i - 150, z) < 0)
      const changes = inside.filter((is, i) => i > 0 && is !== inside[i - 1]).length
      // Behind the chin the throat falls back: only there, and under the nose, may a level be cut twice.
      if (z > -80 || z < -96) expect(changes, `z ${z}`).toBe(2)
    }
  })

  it("has no crease in the middle: a millimetre to either side the skin turns by less than two degrees", () => {
    for (let v = -2; v < 1.7; v += 0.05) {
      const [middle, beside] = [surface.pointAt(surfacePoint(0, v)), surface.pointAt(surfacePoint(0.011, v))]
      const drop = Math.hypot(middle[1] - beside[1], middle[2] - beside[2])
      expect(drop / Math.abs(beside[0])).toBeLessThan(0.035)
    }
  })

  it("agrees with the table of radii the scalp is read from, to a twentieth of a millimetre", () => {
    for (let u = -1.7; u < 1.7; u += 0.083)
      for (let v = -1.7; v < 1.7; v += 0.079) {
        const [x, y, z] = surface.pointAt(surfacePoint(u, v))
        expect(Math.abs(headDistance(x, y, z))).toBeLessThan(0.05)
      }
  })
})
