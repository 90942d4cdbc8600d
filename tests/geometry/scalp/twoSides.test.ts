import { describe, expect, it } from "vitest"
import { alongMm } from "../../../geometry/placing/technique"
import { headSides } from "../../../geometry/scalp/hairline"
import { hairlineForms, type LandmarkName, landmarkNames } from "../../../geometry/scalp/hairlineLandmarks"
import { formControls, makeHeadFromAxes } from "../../../geometry/scalp/head"
import { isOnMidline, moveTo, noMoves } from "../../../geometry/scalp/landmarkMoves"
import { nearestLandmark } from "../../../geometry/scalp/nearestLandmark"
import { inFaceFrame } from "../../../geometry/scalp/zones"
import { mirrored, type SurfacePoint, surfacePoint } from "../../../geometry/surface/frames"
import { contains } from "../../../geometry/surface/surfacePatch"
import { measurePath } from "../../../geometry/surface/surfacePath"
import { distance } from "../../../geometry/surface/vec3"
import { randomMoves, withMoves } from "../../support/movedHeads"
import { randomHeads } from "../../support/randomHeads"

const axes = [1.02, 0.97, 1.01] as const
const templeBack = new Map([["temple" as const, { towardNapeMm: 0, behindMm: 6 }]])

describe("a hairline nobody has moved", () => {
  it("is the same to the last bit when it is told of no moves, or of moves of nothing", () => {
    for (const form of hairlineForms) {
      const head = makeHeadFromAxes(axes, form)
      const still = new Map([["temple" as const, { towardNapeMm: 0, behindMm: 0 }]])
      for (const moves of [noMoves, { left: still, right: still }])
        expect(makeHeadFromAxes(axes, form, moves).hairline.points).toEqual(head.hairline.points)
      expect(head.hairline.sides.left.lengthMm).toBe(head.hairline.sides.right.lengthMm)
    }
  })
})

describe("a temple moved back on the left alone", () => {
  const before = makeHeadFromAxes(axes, "round")
  const head = makeHeadFromAxes(axes, "round", { left: templeBack, right: new Map() }, before.surface)
  const { hairline, surface } = head
  const at = (side: "left" | "right", name: LandmarkName) =>
    hairline.sides[side].landmarks.get(name) as SurfacePoint

  it("lies 6 mm farther in there, and stays on the right", () => {
    expect(at("right", "temple")).toEqual(before.hairline.landmarks.get("temple"))
    const [was, is] = [mirrored(at("right", "temple")), at("left", "temple")].map(surface.pointAt)
    expect(distance(was, is)).toBeCloseTo(6, 0)
    expect(before.hairline.coordinates(at("left", "temple")).behindMm).toBeGreaterThan(5.5)
  })

  it("leaves the hairline on the right where it was", () => {
    for (const mm of [30, 90, 160, 250, 330]) {
      const [now, then] = [hairline, before.hairline].map(({ pointAlong }) => surface.pointAt(pointAlong(mm)))
      expect(distance(now, then)).toBeLessThan(0.2)
    }
  })

  it("lets in and keeps out what its own outline does, on each side", () => {
    const between = surface.toSurface(surface.pointAt(hairline.pointAlong(-alongMm(head, 2))))
    const out = surfacePoint(between[0] * 1.02, between[1] * 1.02)
    expect(hairline.contains(out)).toBe(false)
    expect(before.hairline.contains(out)).toBe(true)
    expect(hairline.contains(mirrored(out))).toBe(true)
  })

  it("gives a place the landmark nearest to it on its own side", () => {
    expect(nearestLandmark(hairline, alongMm(head, -2) + 3)).toEqual({ name: "temple", side: "left" })
    expect(nearestLandmark(hairline, alongMm(head, 5.2))).toEqual({ name: "behind ear", side: "right" })
  })
})

/** Sizes of four surveys, every form, every landmark of each side moved otherwise by up to 8 mm. */
describe.each(randomHeads(8).map((drawn, i) => withMoves(drawn, randomMoves(8, 5 + i))))(
  "a hairline moved on both sides (head %#)",
  (head) => {
    const { hairline, surface } = head
    const { points, sides } = hairline

    it("is as long as its two sides, and as its outline", () => {
      expect(hairline.lengthMm).toBeCloseTo(sides.left.lengthMm + sides.right.lengthMm, 9)
      const outlineMm = measurePath(surface, [...points, points[0]]).lengthMm
      expect(outlineMm / hairline.lengthMm).toBeCloseTo(1, 3)
    })

    it("contains what its outline contains", () => {
      for (let i = 0; i < 1000; i++) {
        const at = surfacePoint(-2.3 + 4.6 * ((i * 0.618034) % 1), -2.3 + 4.6 * ((i * 0.754878) % 1))
        expect(hairline.contains(at)).toBe(contains(points, at))
      }
    })

    it("has a place for every distance along it, once round", () => {
      for (const mm of [7, 83, -42, 240, -301, 0.9 * sides.right.lengthMm, -0.95 * sides.left.lengthMm]) {
        const found = hairline.coordinates(hairline.pointAlong(mm))
        expect(Math.abs(found.alongMm - mm)).toBeLessThan(0.2)
        expect(Math.abs(found.behindMm)).toBeLessThan(0.1)
      }
      expect(hairline.pointAlong(hairline.lengthMm + 20)).toEqual(hairline.pointAlong(20))
      expect(hairline.pointAlong(-hairline.lengthMm - 20)).toEqual(hairline.pointAlong(-20))
    })

    it("measures to the nearest of all its places, across the midline too", () => {
      const outline = points.map(surface.pointAt)
      for (let i = 0; i < 200; i++) {
        const at = surfacePoint(-0.3 + 0.6 * ((i * 0.618034) % 1), 0.3 + ((i * 0.754878) % 1))
        const point = surface.pointAt(at)
        const least = Math.min(...outline.map((each) => distance(each, point)))
        expect(hairline.distanceMm(point)).toBeLessThan(least + 1e-9)
        // The outline's own points stand up to 3.4 mm apart.
        expect(hairline.distanceMm(point)).toBeGreaterThan(
          Math.sqrt(Math.max(0, least ** 2 - 1.7 ** 2)) - 0.05,
        )
      }
    })

    it("counts the landmarks of each side in their order, and lies on them", () => {
      for (const side of headSides) {
        const along = landmarkNames.map((name) => sides[side].landmarkAlongMm(name))
        expect(along).toEqual(along.toSorted((a, b) => a - b))
        for (const at of sides[side].landmarks.values())
          expect(Math.abs(hairline.coordinates(at).behindMm)).toBeLessThan(1)
        expect(alongMm(head, side === "left" ? -3 : 3)).toBeCloseTo((side === "left" ? -1 : 1) * along[3], 9)
      }
    })

    it("has its face frame end at each side's own sideburn", () => {
      for (const [side, sign] of [
        ["left", -1],
        ["right", 1],
      ] as const) {
        const { faceReachMm } = sides[side]
        expect(faceReachMm).toBe(sides[side].landmarkAlongMm("sideburn"))
        const [before, after] = [-14, 14].map((mm) => hairline.pointAlong(sign * (faceReachMm + mm)))
        const inward = ([u, v]: SurfacePoint) => surfacePoint(u * 0.985, v * 0.985 + 0.004)
        expect(inFaceFrame(head, inward(before), 30)).toBe(true)
        expect(inFaceFrame(head, inward(after), 30)).toBe(false)
      }
    })

    if (hairline.form === "peaked") return
    it("is smooth where its sides meet", () => {
      const slopes = [points[1], points[points.length - 1]].map(([u, v]) => (v - points[0][1]) / u)
      expect(Math.abs(slopes[0] - slopes[1])).toBeLessThan(0.25)
    })
  },
)

describe("the move that brings a landmark to a place", () => {
  it("is the way back from the move, on any head and form", () => {
    for (const { axes, surface, hairline } of randomHeads(8)) {
      const controls = formControls(axes, surface, hairline.form)
      const moves = randomMoves(15, 3)
      const moved = makeHeadFromAxes(axes, hairline.form, moves, surface)
      for (const name of landmarkNames) {
        const place = moved.hairline.sides.right.landmarks.get(name) as SurfacePoint
        const { towardNapeMm, behindMm } = moveTo(surface, controls, name, place)
        expect(towardNapeMm).toBeCloseTo(moves.right.get(name)?.towardNapeMm ?? 0, 9)
        expect(behindMm).toBeCloseTo(moves.right.get(name)?.behindMm ?? 0, 9)
      }
    }
  })

  it("is told in mm of the scalp", () => {
    const head = makeHeadFromAxes(axes, "straight")
    for (const name of landmarkNames)
      for (const move of [
        { towardNapeMm: 0, behindMm: 3 },
        { towardNapeMm: isOnMidline(name) ? 0 : 3, behindMm: 0 },
      ]) {
        const moves = { left: new Map(), right: new Map([[name, move]]) }
        const [was, is] = [head, withMoves(head, moves)].map(({ surface, hairline }) =>
          surface.pointAt(hairline.landmarks.get(name) as SurfacePoint),
        )
        expect(distance(was, is)).toBeCloseTo(move.behindMm + move.towardNapeMm, 0)
      }
  })
})
