import { describe, expect, it } from "vitest"
import { followHairline } from "../../../geometry/scalp/followHairline"
import { type HairlineForm, hairlineForms } from "../../../geometry/scalp/hairlineLandmarks"
import { makeHeadFromAxes } from "../../../geometry/scalp/head"
import { mirrored, type SurfacePoint, surfacePoint } from "../../../geometry/surface/frames"
import { distance } from "../../../geometry/surface/vec3"

const hairlineOf = (form: HairlineForm) => makeHeadFromAxes([1.02, 0.97, 1.01], form).hairline
const { surface } = makeHeadFromAxes([1.02, 0.97, 1.01], "round")
const round = hairlineOf("round")
const apartMm = (a: SurfacePoint, b: SurfacePoint) => distance(surface.pointAt(a), surface.pointAt(b))

describe("a place that follows the hairline", () => {
  it("lands on the other hairline from a place on the first", () => {
    for (const form of hairlineForms) {
      const other = hairlineOf(form)
      for (let alongMm = -140; alongMm <= 140; alongMm += 17.5) {
        const there = followHairline(round, other, round.pointAlong(alongMm))
        expect(Math.abs(other.coordinates(there).behindMm)).toBeLessThan(0.5)
      }
    }
  })
  it("comes back when the hairline does, from any form near it", () => {
    const near = surfacePoint(0.31, 0.98)
    for (const form of hairlineForms) {
      const other = hairlineOf(form)
      const back = followHairline(other, round, followHairline(round, other, near))
      expect(apartMm(back, near)).toBeLessThan(0.01)
    }
  })
  it("stays far inside, and behind the temples", () => {
    const receding = hairlineOf("receding")
    for (const at of [surfacePoint(0.12, -0.2), surfacePoint(1.3, -0.4)])
      expect(followHairline(round, receding, at)).toEqual(at)
  })
  it("goes the same way on both sides", () => {
    const at = surfacePoint(0.43, 0.98)
    const peaked = hairlineOf("peaked")
    expect(followHairline(round, peaked, mirrored(at))).toEqual(mirrored(followHairline(round, peaked, at)))
  })
})

it("takes the front of each hairline to turn steadily from centre front to temple, as seen from the crown", () => {
  for (const form of hairlineForms) {
    const hairline = hairlineOf(form)
    const { alongMm } = hairline.coordinates(hairline.landmarks.get("temple") ?? hairline.points[0])
    let before = -1e-9
    for (let mm = 0; mm <= alongMm; mm += 1) {
      const [u, v] = hairline.pointAlong(mm)
      expect(Math.atan2(u, v)).toBeGreaterThan(before)
      before = Math.atan2(u, v)
    }
  }
})
