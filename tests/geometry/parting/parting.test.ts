import { describe, expect, it } from "vitest"
import {
  freehandParting,
  hairlineParting,
  type Parted,
  partingBehind,
  straightParting,
} from "../../../geometry/parting/parting"
import { makeHeadFromAxes } from "../../../geometry/scalp/head"
import { type SurfacePoint, surfacePoint } from "../../../geometry/surface/frames"
import { lengthMm, type SurfacePath } from "../../../geometry/surface/surfacePath"
import { cross, distance, dot, normalize, subtract } from "../../../geometry/surface/vec3"
import { ball, ballHead, ballRadiusMm, onBall } from "../../support/ball"

const head = makeHeadFromAxes([1, 1, 1], "round")
const { surface, hairline } = head

function combed(parted: Parted): SurfacePath {
  if ("refused" in parted) throw new Error(`refused: ${parted.refused}`)
  return parted.parting
}
const last = (path: SurfacePath) => path[path.length - 1]
const apartMm = (a: SurfacePoint, b: SurfacePoint) => distance(surface.pointAt(a), surface.pointAt(b))

describe("a parting combed straight", () => {
  const [from, to] = [surfacePoint(0.3, 0.9), surfacePoint(1.2, 0.1)]

  it("lies in one plane with the middle of the head, ends kept", () => {
    const parting = combed(straightParting(head, from, to))
    const arms = parting.map((at) => subtract(surface.pointAt(at), surface.centre))
    const plane = normalize(cross(arms[0], arms[arms.length - 1]))
    for (const arm of arms) expect(Math.abs(dot(arm, plane))).toBeLessThan(0.05)
    expect(parting[0]).toEqual(from)
    expect(last(parting)).toEqual(to)
  })

  it("is a great circle on a ball", () => {
    const parting = combed(straightParting(ballHead, onBall(0.8, 0.2), onBall(1.1, 1.4)))
    // Spherical law of cosines: cos of the angle between the ends.
    const cosine = Math.cos(0.8) * Math.cos(1.1) + Math.sin(0.8) * Math.sin(1.1) * Math.cos(1.2)
    expect(lengthMm(ball, parting)).toBeCloseTo(ballRadiusMm * Math.acos(cosine), 1)
  })

  it("stops at the hairline when the hand goes on over the face", () => {
    const parting = combed(straightParting(head, surfacePoint(0.2, 0.8), surfacePoint(0.3, 1.9)))
    expect(hairline.coordinates(last(parting)).behindMm).toBeCloseTo(0, 1)
    expect(parting[0]).toEqual(surfacePoint(0.2, 0.8))
  })

  it("is refused on the face, and when it is no longer than a slip of the hand", () => {
    expect(straightParting(head, surfacePoint(-0.2, 1.8), surfacePoint(0.3, 1.9))).toEqual({
      refused: "outside-hairline",
    })
    expect(straightParting(head, surfacePoint(0.2, 0.8), surfacePoint(0.21, 0.8))).toEqual({
      refused: "too-short",
    })
  })
})

describe("a parting drawn by hand", () => {
  const shaken = Array.from({ length: 90 }, (_, i) =>
    surfacePoint(
      -0.4 + 0.01 * i + 0.004 * Math.sin(i * 2.4),
      0.7 - 0.2 * Math.cos(i / 30) + 0.004 * Math.cos(i * 1.9),
    ),
  )
  const meant = shaken.map((_, i) => surfacePoint(-0.4 + 0.01 * i, 0.7 - 0.2 * Math.cos(i / 30)))

  it("loses the tremor and keeps the bend and the ends", () => {
    const parting = combed(freehandParting(head, shaken))
    expect(lengthMm(surface, parting) / lengthMm(surface, meant)).toBeCloseTo(1, 2)
    for (const at of parting) expect(Math.min(...meant.map((place) => apartMm(at, place)))).toBeLessThan(1.5)
    expect(parting[0]).toEqual(shaken[0])
    expect(last(parting)).toEqual(shaken[89])
  })

  it("has few points, at even steps", () => {
    const parting = combed(freehandParting(head, shaken))
    expect(parting.length).toBeLessThanOrEqual(48)
    const steps = parting.slice(1).map((at, i) => apartMm(parting[i], at))
    expect(Math.max(...steps)).toBeLessThan(1.1 * Math.min(...steps))
  })

  it("is refused when it crosses itself", () => {
    const loop = Array.from({ length: 60 }, (_, i) =>
      surfacePoint(0.5 * Math.sin(i / 8), 0.3 + 0.3 * Math.cos(i / 9)),
    )
    expect(freehandParting(head, loop)).toEqual({ refused: "crosses-itself" })
  })

  it("is refused when it is a dot", () => {
    expect(freehandParting(head, [surfacePoint(0, 0.3)])).toEqual({ refused: "too-short" })
    expect(freehandParting(head, [surfacePoint(0, 0.3), surfacePoint(0, 0.3)])).toEqual({
      refused: "too-short",
    })
  })
})

describe("a parting along the hairline", () => {
  it("keeps its distance", () => {
    const parting = combed(hairlineParting(head, { fromAlongMm: -55, toAlongMm: 71, behindMm: 6 }))
    for (const at of parting) expect(Math.abs(hairline.coordinates(at).behindMm - 6)).toBeLessThan(0.3)
    expect(hairline.coordinates(parting[0]).alongMm).toBeCloseTo(-55, 0)
    expect(hairline.coordinates(last(parting)).alongMm).toBeCloseTo(71, 0)
  })

  it("stays on its own side of a peak", () => {
    const peaked = makeHeadFromAxes([1, 1, 1], "peaked")
    const parting = combed(hairlineParting(peaked, { fromAlongMm: 4, toAlongMm: 70, behindMm: 20 }))
    for (const at of parting) {
      expect(at[0]).toBeGreaterThan(-0.01)
      expect(peaked.hairline.coordinates(at).behindMm).toBeGreaterThan(18.5)
    }
  })

  it("runs the way it was dragged", () => {
    const there = combed(hairlineParting(head, { fromAlongMm: 20, toAlongMm: 90, behindMm: 4 }))
    const back = combed(hairlineParting(head, { fromAlongMm: 90, toAlongMm: 20, behindMm: 4 }))
    back.toReversed().forEach((at, i) => {
      expect(apartMm(at, there[i])).toBeLessThan(0.3)
    })
  })

  it("has its mirror on the other side", () => {
    const right = combed(hairlineParting(head, { fromAlongMm: 10, toAlongMm: 130, behindMm: 9 }))
    const left = combed(hairlineParting(head, { fromAlongMm: -10, toAlongMm: -130, behindMm: 9 }))
    right.forEach(([u, v], i) => {
      expect(left[i][0]).toBeCloseTo(-u, 9)
      expect(left[i][1]).toBeCloseTo(v, 9)
    })
  })
})

describe("the same parting again behind", () => {
  const first = combed(hairlineParting(head, { fromAlongMm: -50, toAlongMm: 50, behindMm: 4 }))

  it("lies that much farther from the face, whichever way the first was drawn", () => {
    for (const parting of [first, first.toReversed()])
      for (const at of combed(partingBehind(head, parting, 9)))
        expect(Math.abs(hairline.coordinates(at).behindMm - 13)).toBeLessThan(0.4)
  })

  it("comes forward for a distance below nothing", () => {
    const back = combed(partingBehind(head, first, 9))
    for (const at of combed(partingBehind(head, back, -6)))
      expect(Math.abs(hairline.coordinates(at).behindMm - 7)).toBeLessThan(0.5)
  })
})
