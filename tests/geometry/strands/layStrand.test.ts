import { describe, expect, it } from "vitest"
import type { Body } from "../../../geometry/strands/headDistance"
import { layStrand, type Start } from "../../../geometry/strands/layStrand"
import { strandFigures } from "../../../presets/placement/strands"

/** Nothing near to lie on. */
const nothing: Body = {
  feel: (_x, _y, _z, into) => {
    into.mm = 1e6
  },
  feelEar: (_x, _y, _z, into) => {
    into.mm = 1e6
  },
  feelBust: (_x, _y, _z, into) => {
    into.mm = 1e6
  },
}
const figures = { ...strandFigures, liftRadians: 0, stray: { slope: 0, lengthMm: 100 }, bendMm: 50 }
const lying = { head: { axes: [1, 1, 1] as const }, body: nothing, figures }

function lay(start: Partial<Start>, steps = 40) {
  const points = new Float32Array(3 * (steps + 1))
  const whole: Start = {
    root: [0, -90, 40],
    outward: [0, -1, 0],
    combed: [0, -1, 0],
    lengthMm: 400,
    lot: 1,
    own: 1,
    gathered: null,
    ...start,
  }
  layStrand(whole, lying, points)
  return points
}

const lastStep = (points: Float32Array) =>
  [0, 1, 2].map((axis) => points[points.length - 3 + axis] - points[points.length - 6 + axis])

describe("a strand that hangs free", () => {
  it("keeps its length", () => {
    const points = lay({})
    let mm = 0
    for (let i = 3; i < points.length; i += 3)
      mm += Math.hypot(
        points[i] - points[i - 3],
        points[i + 1] - points[i - 2],
        points[i + 2] - points[i - 1],
      )
    expect(mm).toBeCloseTo(400, 2)
  })
  it("turns down so that the tangent of half its angle falls by e over each bending length", () => {
    // From level (90 degrees, tan 45 = 1) over 200 mm at 50 mm: tan(angle / 2) = e^-4, angle = 2.099 degrees.
    const [, y, z] = lastStep(lay({ lengthMm: 200 }))
    expect((Math.atan2(-y, -z) * 180) / Math.PI).toBeCloseTo(2.099, 2)
  })
  it("comes out the same however finely it is laid", () => {
    const angle = (steps: number) => {
      const [, y, z] = lastStep(lay({ lengthMm: 120 }, steps))
      return Math.atan2(-y, -z)
    }
    expect(angle(12)).toBeCloseTo(angle(96), 5)
  })
  it("hangs straight down at the end, and from the start when combed down", () => {
    const [x, y, z] = lastStep(lay({ lengthMm: 900 }))
    expect(Math.hypot(x, y) / Math.abs(z)).toBeLessThan(1e-6)
    expect(z).toBeLessThan(0)
    const straight = lay({ combed: [0, 0, -1] })
    expect([...straight.slice(-3)].map(Math.round)).toEqual([0, -90, 40 - 400])
  })
})
