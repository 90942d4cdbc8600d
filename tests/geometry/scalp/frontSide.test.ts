import { describe, expect, it } from "vitest"
import { frontSide } from "../../../geometry/scalp/frontSide"
import { makeHeadFromAxes } from "../../../geometry/scalp/head"
import { surfacePoint } from "../../../geometry/surface/frames"
import { mirror, type SurfacePath } from "../../../geometry/surface/surfacePath"

const head = makeHeadFromAxes([1, 1, 1], "round")
const line = (...ends: [number, number][]): SurfacePath =>
  Array.from({ length: 9 }, (_, i) => {
    const [[u0, v0], [u1, v1]] = ends
    return surfacePoint(u0 + ((u1 - u0) * i) / 8, v0 + ((v1 - v0) * i) / 8)
  })

describe("the front of a parting", () => {
  it("is toward the face for one across the top", () => {
    expect(frontSide(line([-0.7, 0.3], [0.7, 0.3]), head)).toBe(1)
    expect(frontSide(line([0.7, 0.3], [-0.7, 0.3]), head)).toBe(-1)
  })

  it("is up for one across the nape", () => {
    expect(frontSide(line([-0.7, -1.4], [0.7, -1.4]), head)).toBe(1)
  })

  it("is toward the hairline for one that follows the temple, not toward the middle of the forehead", () => {
    const temple = Array.from({ length: 9 }, (_, i) => {
      const [u, v] = head.hairline.pointAlong(90 + 6 * i)
      return surfacePoint(u * 0.96, v * 0.96)
    })
    expect(frontSide(temple, head)).toBe(1)
    expect(frontSide(temple.toReversed(), head)).toBe(-1)
  })

  it("is the other hand on the other side of the head", () => {
    const parting = line([0.3, 0.9], [1.2, 0.2])
    expect(frontSide(mirror(parting), head)).toBe(frontSide(parting, head) === 1 ? -1 : 1)
  })

  it("is the head's right for one down the middle", () => {
    expect(frontSide(line([0, 0.3], [0, 1.2]), head)).toBe(-1)
    expect(frontSide(line([0, 1.2], [0, 0.3]), head)).toBe(1)
  })
})
