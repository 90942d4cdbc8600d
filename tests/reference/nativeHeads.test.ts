import { describe, expect, it } from "vitest"
import { headSurface } from "../../geometry/scalp/headSurface"
import { normalAt, type Surface } from "../../geometry/surface/surface"
import { dot, subtract, type Vec3 } from "../../geometry/surface/vec3"
import { groupBy } from "../support/groupBy"
import { leastSquares } from "../support/leastSquares"
import { readCsv } from "../support/readCsv"

/**
 * Thirteen heads digitised through electrode caps (Wakeman, Henson, Sci Data 2015;2:150001). Each is met by the
 * head with three scales, a shift, a pitch and one distance from cap to skin. The marks at the nasion and the ears
 * are left out: they lie on the skin, not on the cap. No electrode lies below the hairline.
 */
const heads = [...groupBy(readCsv("scalp-points-native-dev.csv"), ({ subject }) => subject)].map(
  ([, rows]) => ({
    points: rows
      .filter(({ name }) => name.startsWith("E"))
      .map(({ x, y, z }): Vec3 => [Number(x), Number(y), Number(z)]),
  }),
)

type Placing = { axes: Vec3; shift: Vec3; pitch: number; capMm: number }
const placingOf = ([ax, ay, az, x, y, z, pitch, capMm]: number[]): Placing => ({
  axes: [ax, ay, az],
  shift: [x, y, z],
  pitch,
  capMm,
})
const start = [1, 1, 1, 0, 0, 0, (11.2 * Math.PI) / 180, 4.5]
const steps = [1e-4, 1e-4, 1e-4, 0.01, 0.01, 0.01, 1e-4, 0.01]

const placed = ([x, y, z]: Vec3, { shift, pitch }: Placing): Vec3 => {
  const [sin, cos] = [Math.sin(pitch), Math.cos(pitch)]
  return [x + shift[0], y * cos - z * sin + shift[1], y * sin + z * cos + shift[2]]
}

/** Distance of a point from the skin along the skin's normal, mm: the foot is moved three times. */
function distanceFrom(surface: Surface, point: Vec3): number {
  let at = surface.toSurface(point)
  for (let i = 0; i < 3; i++) {
    const normal = normalAt(surface, at)
    const off = dot(subtract(point, surface.pointAt(at)), normal)
    at = surface.toSurface([
      point[0] - off * normal[0],
      point[1] - off * normal[1],
      point[2] - off * normal[2],
    ])
  }
  return dot(subtract(point, surface.pointAt(at)), normalAt(surface, at))
}

function distances(points: Vec3[], placing: Placing): number[] {
  const skin = headSurface(placing.axes)
  return points.map((point) => distanceFrom(skin, placed(point, placing)) - placing.capMm)
}

/** Cap and scales are told apart by a belief: the cap is 4.5 mm thick, give or take 0.75. */
function meet({ points }: { points: Vec3[] }) {
  const belief = (p: number[]) => (2 * (p[7] - 4.5)) / 0.75
  const residuals = (p: number[]) => [...distances(points, placingOf(p)), belief(p)]
  const placing = placingOf(leastSquares(residuals, start, steps))
  return { points, placing, off: distances(points, placing) }
}

const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length
const rms = (values: number[]) => Math.sqrt(mean(values.map((value) => value * value)))

function regionOf(point: Vec3, placing: Placing) {
  const [x, y, z] = placed(point, placing)
  if (z > 82 * placing.axes[2]) return "top"
  if (y > 40 * placing.axes[1]) return "front"
  if (y < -65 * placing.axes[1]) return "back"
  return x > 0 ? "right" : "left"
}

describe("thirteen digitised heads", () => {
  const met = heads.map(meet)

  it("are met within 2.5 mm", () => {
    expect(met).toHaveLength(13)
    expect(rms(met.flatMap(({ off }) => off))).toBeLessThan(2.5)
    for (const { placing } of met) expect(Math.abs(placing.capMm - 4.5)).toBeLessThan(1.5)
  })

  it("stray to neither side of any region", () => {
    const places = met.flatMap(({ points, placing, off }) =>
      points.map((point, i) => ({ region: regionOf(point, placing), off: off[i] })),
    )
    const regions = groupBy(places, ({ region }) => region)
    expect([...regions.keys()].sort()).toEqual(["back", "front", "left", "right", "top"])
    for (const [region, inIt] of regions)
      expect(Math.abs(mean(inIt.map(({ off }) => off))), region).toBeLessThan(1)
  })
})
