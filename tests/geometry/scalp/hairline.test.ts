import { describe, expect, it } from "vitest"
import { hairlineForms } from "../../../geometry/scalp/hairlineLandmarks"
import { makeHeadFromAxes } from "../../../geometry/scalp/head"
import { mirrored, type SurfacePoint, surfacePoint } from "../../../geometry/surface/frames"
import { contains } from "../../../geometry/surface/surfacePatch"
import { walk } from "../../../geometry/surface/surfaceWalk"
import { distance } from "../../../geometry/surface/vec3"
import { ball, ballHairReach, ballHead, ballRadiusMm, onBall } from "../../support/ball"

const circleMm = 2 * Math.PI * ballRadiusMm * Math.sin(ballHairReach)

describe("the hairline of a ball", () => {
  const { hairline } = ballHead

  it("is as long as its circle", () => {
    expect(hairline.lengthMm / circleMm).toBeCloseTo(1, 3)
  })

  it("tells along and behind as closed forms do", () => {
    for (const [fromTop, turn] of [
      [1.7, 0.6],
      [1.2, -1.9],
      [2.0, 2.4],
    ]) {
      const { alongMm, behindMm } = hairline.coordinates(onBall(fromTop, turn))
      expect(Math.abs(alongMm - (turn / (2 * Math.PI)) * circleMm)).toBeLessThan(0.3)
      expect(Math.abs(behindMm - (ballHairReach - fromTop) * ballRadiusMm)).toBeLessThan(0.3)
    }
  })

  it("borders the face for a quarter on either side", () => {
    for (const { faceReachMm } of Object.values(hairline.sides))
      expect(faceReachMm / circleMm).toBeCloseTo(0.25, 3)
  })

  it("gives the way to itself as a chord", () => {
    const chordMm = 2 * ballRadiusMm * Math.sin(0.2 / 2)
    expect(hairline.distanceMm(ball.pointAt(onBall(ballHairReach - 0.2, -2.1)))).toBeCloseTo(chordMm, 1)
  })
})

describe.each(hairlineForms)("the %s hairline of a head", (form) => {
  const head = makeHeadFromAxes([1.02, 0.97, 1.01], form)
  const { hairline, surface } = head
  const { points } = hairline

  it("has an exact mirror on the left", () => {
    const count = points.length
    expect(points[0][0]).toBe(0)
    for (let i = 1; i < count / 2; i++) expect(points[count - i]).toEqual(mirrored(points[i]))
  })

  it("starts at centre front and runs to the head's right at even steps", () => {
    expect(points[1][0]).toBeGreaterThan(0)
    expect(points[0][1]).toBe(Math.max(...points.filter(([u]) => Math.abs(u) < 0.02).map(([, v]) => v)))
    const steps = points.map((at, i) =>
      distance(surface.pointAt(at), surface.pointAt(points[(i + 1) % points.length])),
    )
    // Chords are a little shorter where the line is round, as at the tip of the sideburn.
    expect(Math.max(...steps)).toBeLessThan(1.2 * Math.min(...steps))
  })

  it("has a place for every distance along it, on both sides", () => {
    for (const alongMm of [7, 83, -42, 240, -301]) {
      const { alongMm: found, behindMm } = hairline.coordinates(hairline.pointAlong(alongMm))
      expect(found).toBeCloseTo(alongMm, 1)
      expect(Math.abs(behindMm)).toBeLessThan(0.05)
    }
    expect(hairline.pointAlong(hairline.lengthMm + 20)).toEqual(hairline.pointAlong(20))
  })

  it("contains what its outline contains", () => {
    for (let i = 0; i < 2000; i++) {
      const at = surfacePoint(-2.3 + 4.6 * ((i * 0.618034) % 1), -2.3 + 4.6 * ((i * 0.754878) % 1))
      expect(hairline.contains(at)).toBe(contains(points, at))
    }
  })

  it("tells how far a place lies behind it, the way one walks there", () => {
    const edge = hairline.pointAlong(20)
    const [[u0, v0], [u1, v1]] = [hairline.pointAlong(19), hairline.pointAlong(21)]
    const [along, across] = surface.tangentsAt(edge)
    const towardBack = [v1 - v0, -(u1 - u0)]
    const heading = [0, 1, 2].map((k) => along[k] * towardBack[0] + across[k] * towardBack[1])
    const size = Math.hypot(...heading)
    const inward = heading.map((x) => x / size) as [number, number, number]
    const { at } = walk(surface, { at: edge, heading: inward }, 12)
    expect(hairline.coordinates(at).behindMm).toBeGreaterThan(11.3)
    expect(hairline.coordinates(at).behindMm).toBeLessThan(12.1)
  })

  it("knows its landmarks by name", () => {
    const onHead = (name: Parameters<typeof hairline.landmarks.get>[0]) =>
      surface.pointAt(hairline.landmarks.get(name) as SurfacePoint)
    expect(onHead("ear top")[2]).toBeGreaterThan(onHead("sideburn")[2])
    expect(onHead("behind ear")[1]).toBeLessThan(onHead("ear top")[1])
    expect(onHead("recession")[0]).toBeGreaterThan(30)
    expect(onHead("centre nape")[2]).toBeLessThan(-35)
    for (const at of hairline.landmarks.values())
      expect(Math.abs(hairline.coordinates(at).behindMm)).toBeLessThan(0.8)
  })

  it("lets in the crown and keeps out the face, the ear and the neck", () => {
    const inside = (x: number, y: number, z: number) => hairline.contains(surface.toSurface([x, y, z]))
    expect(inside(0, -30, 120)).toBe(true)
    expect(inside(-60, -40, 60)).toBe(true)
    expect(inside(0, 95, 40)).toBe(false)
    expect(inside(70, -10, 5)).toBe(false)
    expect(inside(-70, -10, 5)).toBe(false)
    expect(inside(0, -60, -70)).toBe(false)
  })
})

describe("the forms of the front", () => {
  const front = (form: (typeof hairlineForms)[number], name: "centre front" | "recession") => {
    const { hairline, surface } = makeHeadFromAxes([1, 1, 1], form)
    return surface.pointAt(hairline.landmarks.get(name) as SurfacePoint)
  }

  it("stand 36 to 48 mm below the top of the head at the middle (1988 headboard: 41.7, SD 9.5)", () => {
    for (const form of ["round", "straight", "receding", "peaked"] as const) {
      const below = 123.5 - front(form, "centre front")[2]
      expect(below).toBeGreaterThan(36)
      expect(below).toBeLessThan(form === "peaked" ? 51 : 48)
    }
  })

  it("go back farther at a receding corner, and fall at a round one", () => {
    expect(front("receding", "recession")[1]).toBeLessThan(front("straight", "recession")[1] - 10)
    expect(front("round", "recession")[2]).toBeLessThan(front("straight", "recession")[2])
  })
})
