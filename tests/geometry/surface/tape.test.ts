import { describe, expect, it } from "vitest"
import { makeSurface, sphereSurface } from "../../../geometry/surface/surface"
import { layTape, layTapeAround, pullTaut, tautMm } from "../../../geometry/surface/tape"
import { multiply, type Vec3 } from "../../../geometry/surface/vec3"

const sphere = sphereSurface(90)

/** A unit sphere stretched to an ellipsoid with these half axes, mm. */
const ellipsoid = (axes: Vec3) =>
  makeSurface((_, __, into) => into.set([1, 0, 0]), { centre: [0, 0, 0], poleTilt: 0 }, axes, 1)

/** Perimeter of an ellipse, Ramanujan's second formula (1914): right to 1e-9 of itself for axes in 3 to 4. */
function ellipsePerimeter(a: number, b: number): number {
  const h = ((a - b) / (a + b)) ** 2
  return Math.PI * (a + b) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)))
}

describe("a tape on a sphere", () => {
  it("runs along a great circle from end to end", () => {
    const tape = layTape(sphere, [90, 0, 0], [0, 54, 72], [-90, 0, 0])
    expect(Math.abs(tautMm(tape) - Math.PI * 90)).toBeLessThan(0.01)
  })

  it("runs along a small circle when the three points ask for it", () => {
    // The plane z = 54 cuts a circle of radius 72; from front to back by the right is half of it.
    const tape = layTape(sphere, [0, 72, 54], [72, 0, 54], [0, -72, 54])
    expect(Math.abs(tautMm(tape) - Math.PI * 72)).toBeLessThan(0.01)
  })

  it("takes less than half a circle between two points that are near", () => {
    // 60 degrees either side of the top.
    const [sin, cos] = [Math.sin(Math.PI / 3), Math.cos(Math.PI / 3)]
    const tape = layTape(sphere, [0, 90 * sin, 90 * cos], [0, 0, 90], [0, -90 * sin, 90 * cos])
    expect(Math.abs(tautMm(tape) - (90 * 2 * Math.PI) / 3)).toBeLessThan(0.01)
  })

  it("runs round it", () => {
    const tape = layTapeAround(sphere, [0, 72, 54], [0, -72, 54], 70)
    expect(Math.abs(tautMm(tape) - 2 * Math.PI * 72)).toBeLessThan(0.01)
  })
})

describe("a tape on an ellipsoid", () => {
  const axes: Vec3 = [72, 94, 81]
  const surface = ellipsoid(axes)

  it("has the length of the ellipse it cuts", () => {
    const around = layTapeAround(surface, [0, 94, 0], [0, -94, 0], 72)
    const over = layTape(surface, [72, 0, 0], [0, 0, 81], [-72, 0, 0])
    expect(Math.abs(tautMm(around) - ellipsePerimeter(72, 94))).toBeLessThan(0.01)
    expect(Math.abs(tautMm(over) - ellipsePerimeter(72, 81) / 2)).toBeLessThan(0.01)
  })

  it("tilts with its ends", () => {
    // Through the y axis and the point at 30 degrees of the x-z ellipse: half axes 94 and that point's distance.
    const side: Vec3 = [72 * Math.cos(Math.PI / 6), 0, 81 * Math.sin(Math.PI / 6)]
    const tape = layTape(surface, [0, 94, 0], side, [0, -94, 0])
    const half = ellipsePerimeter(94, Math.hypot(...side)) / 2
    expect(Math.abs(tautMm(tape) - half)).toBeLessThan(0.01)
  })

  it("is the tape of the sphere, stretched", () => {
    const tape = layTape(sphereSurface(1), [0, 0.6, 0.8], [1, 0, 0], [0, -0.6, 0.8])
    const laid = layTape(surface, [0, 0.6 * 94, 0.8 * 81], [72, 0, 0], [0, -0.6 * 94, 0.8 * 81])
    expect(tautMm(tape, axes)).toBeCloseTo(tautMm(laid), 6)
  })
})

describe("a taut tape", () => {
  it("bridges a hollow", () => {
    // Up 3, into a hollow, over to 8, down 3: the hollow is spanned, 3 + 8 + 3.
    const points = pullTaut([
      [0, 0, 0],
      [0, 0, 3],
      [4, 0, 1],
      [8, 0, 3],
      [8, 0, 0],
    ])
    expect(points).toHaveLength(4)
    expect(tautMm({ points, isClosed: false })).toBeCloseTo(14, 12)
    expect(tautMm({ points, isClosed: true })).toBeCloseTo(22, 12)
  })

  it("touches the same places when the head is stretched", () => {
    const [cut, axes]: [Vec3[], Vec3] = [[], [0.8, 1.2, 1.1]]
    for (let a = 0; a <= 3.1; a += 0.1) {
      const radius = 80 + 9 * Math.cos(5 * a)
      cut.push([radius * Math.cos(a), 0.4 * radius * Math.sin(a), radius * Math.sin(a)])
    }
    const stretched = cut.map((point) => multiply(point, axes))
    expect(pullTaut(stretched)).toEqual(pullTaut(cut).map((point) => multiply(point, axes)))
  })
})
