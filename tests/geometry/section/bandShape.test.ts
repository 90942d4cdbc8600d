import { describe, expect, it } from "vitest"
import { hairlineParting, straightParting } from "../../../geometry/parting/parting"
import { makeHeadFromAxes } from "../../../geometry/scalp/head"
import { bandShape, type Grain, layOutBand, usualGrain } from "../../../geometry/section/bandShape"
import { bandAreaCm2, cellMiddle } from "../../../geometry/section/cellAreas"
import type { Band } from "../../../geometry/section/section"
import { surfacePoint } from "../../../geometry/surface/frames"
import { mirror } from "../../../geometry/surface/surfacePath"
import { distance, dot, length, type Vec3 } from "../../../geometry/surface/vec3"
import { arcOnBall, ballHairReach, ballHead, ballRadiusMm, onBall } from "../../support/ball"
import { bandOf } from "../../support/sections"

const squareCm = (ballRadiusMm / 10) ** 2
const pointOf = ({ points }: { points: Float64Array }, i: number): Vec3 => [
  points[3 * i],
  points[3 * i + 1],
  points[3 * i + 2],
]
const areaOn = (band: Band, head = ballHead) => bandAreaCm2(bandShape(band, head))

describe("a band on a ball", () => {
  it("behind an arc round the top is a strip between two circles", () => {
    // In front of the top the face is down the ball, so behind is toward the top.
    const band = bandOf(arcOnBall(1.3, -0.6, 0.5), 18)
    const strip = 1.1 * squareCm * (Math.cos(1.3 - 0.2) - Math.cos(1.3))
    expect(areaOn(band) / strip).toBeCloseTo(1, 2.7)
  })

  it("in front of it lies on the other side", () => {
    const band: Band = { ...bandOf(arcOnBall(1.3, -0.6, 0.5), 18), taken: "front" }
    const strip = 1.1 * squareCm * (Math.cos(1.3) - Math.cos(1.3 + 0.2))
    expect(areaOn(band) / strip).toBeCloseTo(1, 2.7)
  })

  it("is cut off by the hairline", () => {
    const band: Band = { ...bandOf(arcOnBall(1.8, -0.6, 0.5), 40), taken: "front" }
    const shape = bandShape(band, ballHead)
    const strip = 1.1 * squareCm * (Math.cos(1.8) - Math.cos(ballHairReach))
    expect(bandAreaCm2(shape) / strip).toBeCloseTo(1, 2)
    for (const depthMm of shape.depthMm) expect(depthMm).toBeCloseTo(0.1 * ballRadiusMm, 1)
  })

  it("with a depth that runs to nothing is half a strip, as nearly as a great circle is straight", () => {
    const parting = [onBall(0.9, 0.3), onBall(0.2, 0.3)]
    const wedge: Band = { ...bandOf(parting), depthMm: { start: 0, end: 7 } }
    // Ribs square to a great circle, y mm along each: the width shrinks by cos(y / r).
    const wedgeCm2 = (0.7 * ballRadiusMm * 7) / 2 / 100
    expect(areaOn(wedge) / wedgeCm2).toBeCloseTo(1, 2.5)
  })
})

describe("the grid of a band", () => {
  const head = makeHeadFromAxes([1, 1, 1], "round")
  const parting = [surfacePoint(0.25, 0.85), surfacePoint(0.6, 0.72), surfacePoint(0.95, 0.45)]
  const band: Band = { ...bandOf(parting), depthMm: { start: 4, end: 11 } }
  const shape = bandShape(band, head)
  const { stations, layers, alongMm, depthMm, normals } = shape

  it("has its first layer on the parting and its last at the depth", () => {
    expect(distance(pointOf(shape, 0), head.surface.pointAt(parting[0]))).toBeLessThan(1e-9)
    expect(alongMm[0]).toBe(0)
    expect(depthMm[0]).toBe(4)
    expect(depthMm[stations - 1]).toBe(11)
    for (let station = 0; station < stations; station++) {
      const first = station * layers
      expect(
        distance(pointOf(shape, first), pointOf(shape, first + layers - 1)) / depthMm[station],
      ).toBeCloseTo(1, 2)
    }
  })

  it("has ribs square to the parting and unit normals", () => {
    for (let station = 1; station < stations - 1; station++) {
      const at = pointOf(shape, station * layers)
      const ahead = pointOf(shape, (station + 1) * layers).map(
        (x, k) => x - pointOf(shape, (station - 1) * layers)[k],
      )
      const rib = pointOf(shape, station * layers + 1).map((x, k) => x - at[k])
      const cosine = dot(ahead as never, rib as never) / length(ahead as never) / length(rib as never)
      expect(Math.abs(cosine)).toBeLessThan(0.03)
      const normal = normals.slice(3 * station * layers, 3 * station * layers + 3)
      expect(Math.hypot(...normal)).toBeCloseTo(1, 12)
    }
  })

  it("has stations no farther apart than 2 mm, and few of them", () => {
    expect(alongMm[1]).toBeLessThanOrEqual(2)
    expect(stations).toBeLessThanOrEqual(96)
    expect(bandShape(bandOf([surfacePoint(0, 0), surfacePoint(0.05, 0)]), head).stations).toBe(8)
  })

  it("is remembered for the band and the head", () => {
    expect(bandShape(band, head)).toBe(shape)
    expect(bandShape({ ...band }, head)).not.toBe(shape)
    expect(bandShape(band, makeHeadFromAxes([1, 1, 1], "round"))).not.toBe(shape)
  })

  it("is the mirror of the grid of the mirrored band", () => {
    const other = bandShape({ ...band, parting: mirror(parting) }, head)
    for (let i = 0; i < stations * layers; i++) {
      const [x, y, z] = pointOf(shape, i)
      expect(pointOf(other, i)).toEqual([-x, y, z])
    }
  })

  it("has cells that make up its area, each with its middle on the scalp", () => {
    const areas = shape.areasCm2
    expect(areas).toHaveLength((stations - 1) * (layers - 1))
    expect(Math.min(...areas)).toBeGreaterThan(0)
    const middle = cellMiddle(shape, 0)
    expect(distance(middle, head.surface.pointAt(head.surface.toSurface(middle)))).toBeLessThan(0.1)
  })

  it("counts nothing past the place where ribs cross inside a tight bend", () => {
    // Half a circle of 10 mm taken 25 mm inward: the ribs meet in its middle, so half a disc is all there is.
    const radius = 10 / ballRadiusMm
    const bend = arcOnBall(radius, -Math.PI / 2, Math.PI / 2)
    const halfDisc = Math.PI * squareCm * (1 - Math.cos(radius))
    expect(areaOn(bandOf(bend, 25)) / halfDisc).toBeCloseTo(1, 1)
  })
})

describe("a grid ten times finer", () => {
  const head = makeHeadFromAxes([1, 1, 1], "round")
  const tenTimes = ([least, most]: readonly [number, number]) => [10 * least, 10 * most] as const
  const fine: Grain = {
    alongMm: usualGrain.alongMm / 10,
    stations: tenTimes(usualGrain.stations),
    acrossMm: usualGrain.acrossMm / 10,
    layers: tenTimes(usualGrain.layers),
  }
  const alongHairline = (fromAlongMm: number, toAlongMm: number, behindMm: number) =>
    hairlineParting(head, { fromAlongMm, toAlongMm, behindMm })
  const cases = [
    { parted: alongHairline(-60, 60, 2), taken: "front", depthMm: { start: 5, end: 5 } },
    { parted: alongHairline(20, 110, 3), taken: "front", depthMm: { start: 8, end: 8 } },
    { parted: alongHairline(60, 150, 20), taken: "front", depthMm: { start: 30, end: 30 } },
    {
      parted: straightParting(head, surfacePoint(0.3, 0.9), surfacePoint(1.3, 0.3)),
      taken: "behind",
      depthMm: { start: 3, end: 14 },
    },
    {
      parted: straightParting(head, surfacePoint(-1.2, 0.1), surfacePoint(1.2, 0.1)),
      taken: "front",
      depthMm: { start: 60, end: 20 },
    },
  ] as const

  it.each(cases)("changes no area by 0.2 %: $taken, $depthMm", ({ parted, taken, depthMm }) => {
    if ("refused" in parted) throw new Error(parted.refused)
    const band: Band = { ...bandOf(parted.parting), taken, depthMm }
    const finer = bandAreaCm2(layOutBand(band, head, fine))
    expect(Math.abs(areaOn(band, head) / finer - 1)).toBeLessThan(0.002)
  })
})

it("lies on the ball it is laid on", () => {
  const shape = bandShape(bandOf(arcOnBall(0.8, 0, 1), 23), ballHead)
  for (let i = 0; i < shape.stations * shape.layers; i++)
    expect(length(pointOf(shape, i))).toBeCloseTo(ballRadiusMm, 9)
})
