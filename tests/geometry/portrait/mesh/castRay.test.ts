import { describe, expect, it } from "vitest"
import { castRay } from "../../../../geometry/portrait/mesh/castRay"
import { ellipsoid } from "../../../../geometry/scalp/fields"

const ball = ellipsoid([0, 0, 0], [50, 50, 50])

describe("a ray cast on a distance field", () => {
  it("meets a ball where Pythagoras says", () => {
    const place = castRay(ball, [30, 200, 0], [0, -1, 0])
    expect(place?.[0]).toBe(30)
    expect(place?.[1]).toBeCloseTo(40, 1)
  })

  it("misses what lies beside it", () => {
    expect(castRay(ball, [51, 200, 0], [0, -1, 0])).toBeNull()
  })
})
