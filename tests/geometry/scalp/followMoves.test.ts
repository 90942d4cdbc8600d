import { describe, expect, it } from "vitest"
import { placeBehind } from "../../../geometry/placing/technique"
import { followMoves } from "../../../geometry/scalp/followMoves"
import { makeHeadFromAxes } from "../../../geometry/scalp/head"
import { noMoves } from "../../../geometry/scalp/landmarkMoves"
import { type SurfacePoint, surfacePoint } from "../../../geometry/surface/frames"
import { randomMoves, withMoves } from "../../support/movedHeads"

const head = makeHeadFromAxes([1.02, 0.97, 1.01], "straight")
const moved = withMoves(head, randomMoves(8, 9))
const follow = followMoves(head.hairline, moved.hairline)

describe("places once landmarks have been moved", () => {
  it("keep to the hairline they lie on, to 1.5 mm, and their way behind it where they lie near", () => {
    for (let mm = -330; mm <= 330; mm += 15) {
      const on = follow(head.hairline.pointAlong(mm))
      expect(Math.abs(moved.hairline.coordinates(on).behindMm)).toBeLessThan(1.5)
      const near = follow(placeBehind(head, mm, 5))
      expect(Math.abs(moved.hairline.coordinates(near).behindMm - 5)).toBeLessThan(3)
    }
  })
  it("stay on the crown", () => {
    const crown = surfacePoint(0.02, -0.1)
    expect(follow(crown)).toEqual(crown)
  })
  it("stay everywhere when nothing has been moved", () => {
    const still = followMoves(head.hairline, withMoves(head, noMoves).hairline)
    for (let mm = -330; mm <= 330; mm += 30) {
      const at = placeBehind(head, mm, 20)
      expect(still(at)).toEqual(at)
    }
  })
  it("keep together: neighbours stay neighbours", () => {
    const apart = (a: SurfacePoint, b: SurfacePoint) => Math.hypot(a[0] - b[0], a[1] - b[1])
    for (let mm = -330; mm <= 330; mm += 10)
      for (const behindMm of [2, 12, 40]) {
        const [a, b] = [mm, mm + 1].map((each) => placeBehind(head, each, behindMm))
        expect(apart(follow(a), follow(b))).toBeLessThan(2.5 * apart(a, b) + 0.004)
      }
  })
})
