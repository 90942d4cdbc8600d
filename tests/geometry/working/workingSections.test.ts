import { describe, expect, it } from "vitest"
import type { Head } from "../../../geometry/scalp/head"
import { type SurfacePoint, surfacePoint } from "../../../geometry/surface/frames"
import { areaCm2, contains } from "../../../geometry/surface/surfacePatch"
import { cutsOf } from "../../../geometry/working/workingSectionCuts"
import { workingKindOf } from "../../../geometry/working/workingSectionKind"
import { innerPlaces } from "../../../geometry/working/workingSectionPlaces"
import { sharesCm2 } from "../../../geometry/working/workingSectionShares"
import { fitStartLine } from "../../../geometry/working/workingSectionStart"
import { areaAt, type Division, divideScalp } from "../../../geometry/working/workingSections"
import { workingStarts } from "../../../presets/placement/workingSections"
import { arcOnBall, ballHairReach, ballHead, ballRadiusMm, onBall } from "../../support/ball"
import { randomHeads } from "../../support/randomHeads"
import { bandOf } from "../../support/sections"

/** The ball's hair is a cap: 2 pi r^2 (1 - cos reach). */
const capCm2 = (2 * Math.PI * ballRadiusMm ** 2 * (1 - Math.cos(ballHairReach))) / 100
const crown = surfacePoint(0, 0)
/** From the hairline over the crown of the ball to the hairline again, by the ways they leave in. */
const over = (from: number, to: number): SurfacePoint[] => [...leg(from).toReversed(), crown, ...leg(to)]
/** From the crown down to the hairline, thirty places on the way. */
const leg = (turn: number) =>
  Array.from({ length: 30 }, (_, i) => onBall((ballHairReach * (i + 1)) / 30, turn))
const areasOn = (head: Head, { areas }: Division) => areas.map(({ ring }) => areaCm2(head.surface, ring))
const onBallAreas = (...partings: SurfacePoint[][]) =>
  areasOn(ballHead, divideScalp(ballHead, partings)).sort((a, b) => a - b)

describe("a ball divided over its crown", () => {
  it("is one area, the whole cap, before it is divided", () => {
    expect(onBallAreas()).toEqual([expect.closeTo(capCm2, 0)])
  })
  it("falls into halves", () => {
    for (const area of onBallAreas(over(0, Math.PI))) expect(area).toBeCloseTo(capCm2 / 2, 0)
  })
  it("falls into wedges by the angle between two partings", () => {
    // A corner of 0.5 radians at the crown: 0.5 / 2 pi of the cap, and the rest.
    const [wedge, rest] = onBallAreas(over(0.3, 0.8))
    expect(wedge).toBeCloseTo((capCm2 * 0.5) / (2 * Math.PI), 0)
    expect(rest).toBeCloseTo(capCm2 - (capCm2 * 0.5) / (2 * Math.PI), 0)
  })
  it("falls into four by two crossing partings, their corners 0.7, pi - 0.7, and the same again", () => {
    const areas = onBallAreas(over(0.2, Math.PI + 0.2), over(0.9, Math.PI + 0.9))
    const wedge = (capCm2 * 0.7) / (2 * Math.PI)
    expect(areas).toEqual(
      [wedge, wedge, capCm2 / 2 - wedge, capCm2 / 2 - wedge].map((cm2) => expect.closeTo(cm2, 0)),
    )
  })
  it("parts a ring round the crown off by an arc that runs on to the hairline", () => {
    // Half of a cap of 1 radian: the arc from side to side, closed by the line over the crown.
    const arc = arcOnBall(1, -Math.PI / 2, Math.PI / 2)
    const [half] = onBallAreas(over(-Math.PI / 2, Math.PI / 2), arc)
    expect(half).toBeCloseTo((Math.PI * ballRadiusMm ** 2 * (1 - Math.cos(1))) / 100, 0)
  })
})

describe("the ends of a dividing parting", () => {
  const profile = over(0, Math.PI)
  /** From the crown of the ball to the head's right, so many mm short of the hairline. */
  const spoke = (shortMm: number, fromMm = 0) => [
    onBall(fromMm / ballRadiusMm, Math.PI / 2),
    onBall(ballHairReach - shortMm / ballRadiusMm, Math.PI / 2),
  ]
  it("go straight on over the last 25 mm to the hairline or to another", () => {
    expect(onBallAreas(profile, spoke(20, 15))).toEqual([
      expect.closeTo(capCm2 / 4, 0),
      expect.closeTo(capCm2 / 4, 0),
      expect.closeTo(capCm2 / 2, 0),
    ])
  })
  it("divide nothing when they stop farther off", () => {
    const { areas, dividers } = divideScalp(ballHead, [profile, spoke(40)])
    expect(areas).toHaveLength(2)
    expect(dividers[1].path).toEqual([])
  })
  it("say how much is left over past the last edge they meet", () => {
    // From 30 mm on the left of the profile, over it, to the hairline on the right.
    const long = [onBall(30 / ballRadiusMm, -Math.PI / 2), crown, onBall(ballHairReach, Math.PI / 2)]
    const [, { looseMm }] = divideScalp(ballHead, [profile, long]).dividers
    expect(looseMm[0]).toBeCloseTo(30, 0)
    expect(looseMm[1]).toBe(0)
  })
  it("divide nothing when the lines hang together with each other but not with the hairline", () => {
    const corner = (turn: number) => onBall(0.6, turn)
    const side = (from: number, to: number) => [corner(from), corner(to)]
    const third = (2 * Math.PI) / 3
    const { areas, dividers } = divideScalp(ballHead, [
      side(0, third),
      side(third, 2 * third),
      side(2 * third, 0),
    ])
    expect(areas).toHaveLength(1)
    expect(dividers.every(({ path }) => path.length === 0)).toBe(true)
  })
})

describe("the usual starts", () => {
  const counts: Record<string, string[]> = {
    "four-section": ["front right", "front left", "back right", "back left"],
    "four-with-triangle": ["triangle centre", "front right", "front left", "back right", "back left"],
    triangle: ["triangle centre", "around centre"],
    "face-frame-triangle": ["frame centre", "behind centre"],
    profile: ["side right", "side left"],
    radial: ["front centre", "back centre"],
    horseshoe: ["top centre", "around centre"],
  }
  const heads = randomHeads(100)
  it.each(workingStarts)(
    "$name: divides 100 heads of four hairlines, and nothing is lost",
    ({ id, lines }) => {
      for (const head of heads) {
        const partings = lines.map((line) => {
          const made = fitStartLine(head, line)
          if ("refused" in made) throw new Error(`${head.hairline.form}: ${made.refused}`)
          return made.parting
        })
        const division = divideScalp(head, partings)
        const told = division.areas.map((area) => Object.values(workingKindOf(area, head)).join(" "))
        expect(told.sort()).toEqual(counts[id].toSorted())
        expect(division.dividers.every(({ path, looseMm: [a, b] }) => path.length > 1 && a + b === 0)).toBe(
          true,
        )
      }
    },
  )
  it("gives areas that add up to the hair within half a per cent, and twins that are alike", () => {
    for (const head of heads.slice(0, 4))
      for (const { lines } of workingStarts) {
        const partings = lines.flatMap((line) => {
          const made = fitStartLine(head, line)
          return "parting" in made ? [made.parting] : []
        })
        const division = divideScalp(head, partings)
        const areas = areasOn(head, division)
        const whole = areaCm2(head.surface, head.hairline.points)
        const sum = areas.reduce((total, area) => total + area)
        expect(Math.abs(sum - whole)).toBeLessThan(0.005 * whole)
        for (const [i, area] of division.areas.entries()) {
          const [u, v] = innerPlaces(area)[0].at
          const twin = areaAt(division, surfacePoint(-u, v))
          expect(Math.abs(areas[i] - areas[twin])).toBeLessThan(0.005 * areas[i])
        }
      }
  })
})

describe("a band on a divided ball", () => {
  const division = divideScalp(ballHead, [over(0, Math.PI)])
  const right = areaAt(division, onBall(1, Math.PI / 2))
  const left = areaAt(division, onBall(1, -Math.PI / 2))
  it("lies in the areas by its scalp: a third to the left of the middle, two to the right", () => {
    const shares = sharesCm2(bandOf(arcOnBall(1, -0.3, 0.6)), ballHead, division)
    const whole = shares[left] + shares[right]
    // To half a cell of the band's grid, 2 mm along a parting of 0.9 radians round a circle of 90 sin 1 mm.
    expect(Math.abs(shares[left] / whole - 1 / 3)).toBeLessThan(1 / (0.9 * ballRadiusMm * Math.sin(1)))
  })
  it("is cut where its middle crosses", () => {
    const cuts = cutsOf(bandOf(arcOnBall(1, -0.3, 0.6)), ballHead, division)
    expect(cuts.map(({ area }) => area)).toEqual([left, right])
    expect(cuts[0]).toMatchObject({ from: 0, to: expect.closeTo(1 / 3, 3) })
    expect(cuts[1]).toMatchObject({ from: expect.closeTo(1 / 3, 3), to: 1 })
  })
  it("is not cut where it keeps to one side", () => {
    expect(cutsOf(bandOf(arcOnBall(1, 0.2, 0.6)), ballHead, division)).toEqual([
      { area: right, from: 0, to: 1 },
    ])
  })
})

it("finds places inside an area, the one farthest inside first", () => {
  const [area] = divideScalp(ballHead, [over(0, Math.PI)]).areas
  const places = innerPlaces(area)
  expect(places.length).toBeGreaterThan(20)
  expect(places.every(({ at }) => contains(area.ring, at))).toBe(true)
  expect(places[0].clear).toBeGreaterThan(0.6)
})
