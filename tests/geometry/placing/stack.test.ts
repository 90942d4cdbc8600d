import { describe, expect, it } from "vitest"
import { hairlineParting, straightParting } from "../../../geometry/parting/parting"
import { makeStack } from "../../../geometry/placing/stack"
import type { StackWay } from "../../../geometry/placing/stackStart"
import type { Head } from "../../../geometry/scalp/head"
import { makeHeadFromAxes } from "../../../geometry/scalp/head"
import { overlapCm2 } from "../../../geometry/section/overlap"
import type { Band } from "../../../geometry/section/section"
import { nearestOnPath } from "../../../geometry/surface/nearestOnPath"
import { smoothLine } from "../../../geometry/surface/spline"
import { lengthMm, measurePath, type SurfacePath } from "../../../geometry/surface/surfacePath"
import { arcOnBall, ball, ballHead, ballRadiusMm } from "../../support/ball"
import { randomHeads } from "../../support/randomHeads"
import { bandOf } from "../../support/sections"

const way: StackWay = { follow: "parting", gapMm: 3, shiftMm: 0, depthsMm: [4], shortestMm: 15 }

const bandAlong = (head: Head, fromAlongMm: number, toAlongMm: number, behindMm: number): Band => {
  const made = hairlineParting(head, { fromAlongMm, toAlongMm, behindMm })
  if ("refused" in made) throw new Error(made.refused)
  return { ...bandOf(made.parting, 4), taken: "front" }
}

function rows(head: Head, first: Band, wanted: StackWay, most = 40): SurfacePath[] {
  const stack = makeStack(head, first, wanted)
  const found: SurfacePath[] = []
  for (let row = 0; row < most; row++) {
    const parting = stack.partingAt(row)
    if (!parting) break
    found.push(parting)
  }
  return found
}

/** Distances of the points of one parting, its ends apart, from the smooth line of another, mm. */
function apartMm({ surface }: Head, parting: SurfacePath, from: SurfacePath) {
  const nearest = nearestOnPath(surface, measurePath(surface, smoothLine(from, 8)))
  return parting.slice(1, -1).map((at) => nearest(surface.pointAt(at)).chordMm)
}

describe("a stack on a ball", () => {
  // An arc round the top, 60 degrees from it, drawn across the front: behind it is toward the top.
  const fromTop = Math.PI / 3
  const first = { ...bandOf(arcOnBall(fromTop, -0.6, 0.6), 4), taken: "front" } as const

  it("lies on arcs nearer to the top by gap and depth, one after the other", () => {
    for (const [i, parting] of rows(ballHead, first, way, 6).entries()) {
      const wanted = fromTop - ((i + 1) * (3 + 4)) / ballRadiusMm
      for (const [u, v] of parting.slice(1, -1)) expect(Math.hypot(u, v)).toBeCloseTo(wanted, 3)
    }
  })

  it("takes depths in turn, and the first band's own where hair is taken behind", () => {
    const steps = (band: Band) =>
      rows(ballHead, band, { ...way, depthsMm: [6, 2] }, 3).map(
        (parting) => (fromTop - Math.hypot(...parting[1])) * ballRadiusMm,
      )
    const ahead = steps({ ...first, taken: "behind" })
    // In front: 3 + 6, 3 + 2, 3 + 6. Behind: 3 + the first's 4, 3 + 6, 3 + 2.
    for (const [i, mm] of [9, 14, 23].entries()) expect(steps(first)[i]).toBeCloseTo(mm, 1)
    for (const [i, mm] of [7, 16, 21].entries()) expect(ahead[i]).toBeCloseTo(mm, 1)
  })

  it("moves each second one along, and the length of all stays in step with their arcs", () => {
    const [one, two] = rows(ballHead, first, { ...way, shiftMm: 20 }, 2)
    const turnOf = ([u, v]: readonly [number, number]) => Math.atan2(u, v)
    const shift = 20 / (ballRadiusMm * Math.sin(fromTop))
    // The line is made longer along a great circle, which leaves the arc a little: a tenth of a radian of slack.
    expect(turnOf(one[0])).toBeCloseTo(-0.6 + shift, 1)
    expect(turnOf(two[0])).toBeCloseTo(-0.6, 2)
    expect(turnOf(two[two.length - 1])).toBeCloseTo(0.6, 2)
    const arc = 1.2 * ballRadiusMm * Math.sin(fromTop - 14 / ballRadiusMm)
    expect(lengthMm(ball, two)).toBeCloseTo(arc, 0)
  })

  it("ends where the partings grow too short", () => {
    const found = rows(ballHead, first, way, 40)
    // An arc of 1.2 radians is 15 mm long at a sine of 15 / 108: 7.98 degrees, 12.5 mm from the top; (94.2 - 12.5) / 7 = 11.7.
    expect(found).toHaveLength(11)
    expect(makeStack(ballHead, first, way).partingAt(30)).toBeNull()
  })
})

describe.each(["hairline", "parting"] as const)("a stack that follows the %s, on any head", (follow) => {
  it("stays inside the hairline, keeps its gap within 0.3 mm and takes no hair twice", () => {
    for (const head of randomHeads(8)) {
      const first = bandAlong(head, 20, 78, 6)
      const found = rows(head, first, { ...way, follow, gapMm: 2.5 }, 8)
      expect(found.length).toBeGreaterThan(5)
      let before: Band = first
      for (const parting of found) {
        for (const at of parting) expect(head.hairline.coordinates(at).behindMm).toBeGreaterThan(-0.1)
        for (const mm of apartMm(head, parting, before.parting)) expect(Math.abs(mm - 6.5)).toBeLessThan(0.3)
        const band: Band = { ...first, parting: [...parting] }
        expect(overlapCm2(band, before, head)).toBe(0)
        before = band
      }
    }
  })
})

describe("a stack", () => {
  const head = makeHeadFromAxes([1, 1, 1], "round")

  it("keeps the hairline's distance behind a parting that does not", () => {
    const made = straightParting(
      head,
      head.surface.toSurface([30, 70, 90]),
      head.surface.toSurface([66, 20, 70]),
    )
    if ("refused" in made) throw new Error(made.refused)
    const first = { ...bandOf(made.parting, 3), taken: "front" } as const
    const deepest = Math.max(...made.parting.map((at) => head.hairline.coordinates(at).behindMm))
    for (const [i, parting] of rows(head, first, { ...way, follow: "hairline" }, 3).entries()) {
      const middle = parting[parting.length >> 1]
      expect(head.hairline.coordinates(middle).behindMm).toBeCloseTo(deepest + 7 * (i + 1), 0)
    }
  })

  it("has its mirror on the other side", () => {
    const right = rows(head, bandAlong(head, 20, 78, 6), way, 4)
    const left = rows(head, bandAlong(head, -20, -78, 6), way, 4)
    for (const [i, parting] of right.entries())
      for (const [j, [u, v]] of parting.entries()) {
        expect(left[i][j][0]).toBeCloseTo(-u, 6)
        expect(left[i][j][1]).toBeCloseTo(v, 6)
      }
  })

  it("goes up from the nape when it follows the hairline", () => {
    const half = head.hairline.lengthMm / 2
    const nape = bandAlong(head, half - 25, half - 5, 7)
    const found = rows(head, nape, { ...way, follow: "hairline", shortestMm: 5 }, 5)
    expect(found.length).toBe(5)
  })
})
