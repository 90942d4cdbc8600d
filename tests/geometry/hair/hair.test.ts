import { describe, expect, it } from "vitest"
import { densityAt, hairsRange, lengthCmAt, linearGPerCm, pastBandMm } from "../../../geometry/hair/hair"
import { makeHeadFromAxes } from "../../../geometry/scalp/head"
import { zonePlanes } from "../../../geometry/scalp/zones"
import type { Vec3 } from "../../../geometry/surface/vec3"
import { tradeFigures } from "../../../presets/formula/tradeFigures"
import { evenHair } from "../../support/sections"

const axes: Vec3 = [1.04, 0.97, 1.02]
const head = makeHeadFromAxes(axes, "round")
const figures = {
  ...tradeFigures,
  density: { vertex: 1, frontal: 0.98, occipital: 0.9, side: 0.8, hairlineBand: 0.5 },
}
/** The scalp in the direction of a point of the unscaled head. */
const scalp = (x: number, y: number, z: number) =>
  head.surface.pointAt(head.surface.toSurface([x * axes[0], y * axes[1], z * axes[2]]))

describe("density over the head", () => {
  const hair = evenHair(30, { densityPerCm2: 200 })
  const density = (at: Vec3) => densityAt(head, hair, figures, at)

  it("is the chosen density times the factor of the region", () => {
    expect(density(scalp(0, -30, 122))).toBeCloseTo(200, 6)
    expect(density(scalp(0, 45, 112))).toBeCloseTo(200 * 0.98, 6)
    expect(density(scalp(0, -93, 30))).toBeCloseTo(200 * 0.9, 6)
    expect(density(scalp(68, -25, 62))).toBeCloseTo(200 * 0.8, 6)
  })

  it("falls at the hairline, over a few mm", () => {
    const { hairline, surface } = head
    const behind = (mm: number) => {
      const [u, v] = hairline.pointAlong(5)
      return density(surface.pointAt(surface.toSurface(surface.pointAt([u, v - mm / 85] as never))))
    }
    expect(behind(2)).toBeCloseTo(200 * 0.5, 0)
    expect(behind(10)).toBeGreaterThan(200 * 0.55)
    expect(behind(10)).toBeLessThan(200 * 0.95)
    expect(behind(20)).toBeCloseTo(200 * 0.98, 0)
  })

  it("is the same on both sides", () => {
    const [x, y, z] = scalp(50, 20, 80)
    expect(density([-x, y, z])).toBe(density([x, y, z]))
  })
})

describe("length over the head", () => {
  const hair = { ...evenHair(0), lengthCm: { front: 12, sides: 31, back: 44 } }
  const lengthCm = (at: Vec3) => lengthCmAt(head, hair, figures, at)

  it("is what was set at the front hairline, above the ears and at the back", () => {
    expect(lengthCm(scalp(0, 82, 82))).toBeCloseTo(12, 6)
    expect(lengthCm(scalp(70, 0, 50))).toBeCloseTo(31, 6)
    expect(lengthCm(scalp(0, -95, 20))).toBeCloseTo(44, 6)
  })

  it("lies between on the way", () => {
    expect(lengthCm(scalp(45, 60, 75))).toBeGreaterThan(12)
    expect(lengthCm(scalp(45, 60, 75))).toBeLessThan(31)
  })
})

describe("the mass of a hair", () => {
  it("is density x pi d2 / 4: 1.32 g/cm3 and 70 um give 50.8 ug a cm", () => {
    expect(linearGPerCm(70, 1.32) * 1e6).toBeCloseTo(50.8, 1)
  })
})

it("counts hairs with a range", () => {
  expect(hairsRange(800, { ...figures, hairsFactor: { low: 0.7, mid: 1, high: 1.4 } })).toEqual({
    low: 560,
    mid: 800,
    high: 1120,
  })
})

it("counts by the middle factor where that is not 1", () => {
  expect(hairsRange(800, { ...figures, hairsFactor: { low: 0.5, mid: 0.75, high: 1.25 } }).mid).toBe(600)
})

it("is past the sparser band once the blend into it is over: half of it lies behind the band", () => {
  expect(pastBandMm({ ...figures, hairlineBandMm: 11, hairlineBlendMm: 6 })).toBe(14)
})

describe("where one region passes into the next", () => {
  // A plain ball of 100 mm half axes cannot be had; a long head shows which axis a place is measured by.
  const long = makeHeadFromAxes([0.8, 1.25, 0.9], "round")
  const at = (x: number, y: number, z: number): Vec3 => [x * 0.8, y * 1.25, z * 0.9]
  const hair = { ...evenHair(0, { densityPerCm2: 200 }), lengthCm: { front: 12, sides: 31, back: 44 } }
  const reach = figures.regionBlendMm / 2
  const density = (point: Vec3) => densityAt(long, hair, figures, point, 1000)

  it("stands halfway on the plane itself, and is whole half a blend past it", () => {
    const side = (y: number) => density(at(60, y, zonePlanes.topZ - reach))
    expect(side(zonePlanes.backY)).toBeCloseTo(200 * (0.8 + 0.9) * 0.5, 6)
    expect(side(zonePlanes.backY + reach)).toBeCloseTo(200 * 0.8, 6)
    expect(side(zonePlanes.backY - reach)).toBeCloseTo(200 * 0.9, 6)
    const top = (y: number) => density(at(0, y, zonePlanes.topZ + reach))
    expect(top(reach)).toBeCloseTo(200 * 0.98, 6)
    expect(top(-reach)).toBeCloseTo(200, 6)
  })

  it("has its length by its place on a head of usual size", () => {
    const { from, to } = figures.frontLengthMm
    expect(lengthCmAt(long, hair, figures, at(0, (from + to) / 2, 80))).toBeCloseTo((12 + 31) / 2, 6)
    expect(lengthCmAt(long, hair, figures, at(0, from, 80))).toBeCloseTo(31, 6)
  })
})
