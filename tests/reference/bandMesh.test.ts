import { describe, expect, it } from "vitest"
import { densityAt } from "../../geometry/hair/hair"
import { hairlineParting, type Parted, straightParting } from "../../geometry/parting/parting"
import { hairlineForms } from "../../geometry/scalp/hairlineLandmarks"
import { type Head, makeHeadFromAxes } from "../../geometry/scalp/head"
import { bandShape } from "../../geometry/section/bandShape"
import { bandAreaCm2 } from "../../geometry/section/cellAreas"
import { measureSection } from "../../geometry/section/measureSection"
import { stitchedShare } from "../../geometry/section/pickedUp"
import type { Band } from "../../geometry/section/section"
import { surfacePoint } from "../../geometry/surface/frames"
import { tradeFigures } from "../../presets/formula/tradeFigures"
import { arcOnBall, ballHead } from "../support/ball"
import { bandIntegral, bandOracleCm2, oracleBand } from "../support/bandOracle"
import { bandOf, evenHair, weaveOf } from "../support/sections"

/**
 * The area of a band against an independent mesh of the scalp, which asks every cell of it for the perpendiculars to the
 * parting (tests/support/bandOracle.ts). Against a mesh twice as fine the mesh itself is out by less than
 * 0.01 % for half of the bands and by 0.5 % at most, where a band a hand deep is folded; there a cell twice as wide does.
 * BAND_SECTIONS=300 measures as many: median 0.03 %, 95th percentile 0.13 %, worst 0.33 %; fewer are enough to guard.
 */
const sections = Number(process.env.BAND_SECTIONS ?? 40)
const cellMm = 0.3
const cellFor = ({ depthMm: { start, end } }: Band) => (Math.max(start, end) > 15 ? 2 * cellMm : cellMm)
function generator(seed: number) {
  let state = seed
  return () => {
    state = (state * 16807) % 2147483647
    return state / 2147483647
  }
}

const onMesh = (head: Head, band: Band, cell = cellFor(band)) =>
  bandOracleCm2(head, oracleBand(head, band), cell)

describe("the mesh itself", { timeout: 120_000 }, () => {
  it("finds a strip of a ball between two circles, to 0.05 %", () => {
    const band = bandOf(arcOnBall(1.3, -0.6, 0.5), 18)
    const strip = 1.1 * 81 * (Math.cos(1.1) - Math.cos(1.3))
    expect(Math.abs(onMesh(ballHead, band) / strip - 1)).toBeLessThan(5e-4)
  })

  it("finds half a disc inside half a circle of 10 mm taken 25 mm inward: past its middle nothing is nearer to it", () => {
    const bend = arcOnBall(10 / 90, -Math.PI / 2, Math.PI / 2)
    const halfDisc = Math.PI * 81 * (1 - Math.cos(10 / 90))
    expect(Math.abs(onMesh(ballHead, bandOf(bend, 25), 0.15) / halfDisc - 1)).toBeLessThan(0.002)
  })
})

const heads = hairlineForms.map((form) => makeHeadFromAxes([1, 1, 1], form))

/** A section as someone may draw one: straight over the head, or along the hairline anywhere round it. */
function drawn(head: Head, random: () => number): Band | null {
  const between = (low: number, high: number) => low + (high - low) * random()
  const made: Parted = random() < 0.5 ? straight(head, between) : along(head, between)
  const depth = random() < 0.85 ? between(1.5, 12) : between(20, 48)
  const end = random() < 0.7 ? depth : depth * between(0.4, 1)
  const taken = random() < 0.5 ? "front" : "behind"
  return "parting" in made ? { ...bandOf(made.parting), taken, depthMm: { start: depth, end } } : null
}

type Between = (low: number, high: number) => number

function straight(head: Head, between: Between): Parted {
  const [reach, turn, lean, half] = [
    between(0.15, 0.85),
    between(0, 6.28),
    between(-0.7, 0.7),
    between(0.15, 0.4),
  ]
  const [u, v] = [reach * Math.sin(turn), reach * Math.cos(turn)]
  const [du, dv] = [half * Math.cos(turn + lean), -half * Math.sin(turn + lean)]
  return straightParting(head, surfacePoint(u - du, v - dv), surfacePoint(u + du, v + dv))
}

function along(head: Head, between: Between): Parted {
  const fromAlongMm = between(-180, 150)
  const toAlongMm = fromAlongMm + between(20, 80)
  return hairlineParting(head, { fromAlongMm, toAlongMm, behindMm: between(1, 20) })
}

/** A band of less than this, cm2, is no foil's worth: its edge is all there is of it. */
const leastCm2 = 0.5

describe(`${sections} sections drawn at random`, { timeout: 600_000 }, () => {
  const random = generator(15)
  const off: number[] = []
  for (let i = 0; off.length < sections; i++) {
    const head = heads[i % heads.length]
    const band = drawn(head, random)
    const cm2 = band ? onMesh(head, band) : 0
    if (band && cm2 > leastCm2) off.push(Math.abs(bandAreaCm2(bandShape(band, head)) / cm2 - 1))
  }
  off.sort((a, b) => a - b)
  const at = (share: number) => off[Math.min(off.length - 1, Math.floor(share * off.length))]

  it("are as large as on the mesh: half within 0.05 %, nineteen in twenty within 0.2 %, all within 1 %", () => {
    if (process.env.BAND_SECTIONS) console.log(`median ${at(0.5)}, 95 % ${at(0.95)}, worst ${at(1)}`)
    expect(at(0.5)).toBeLessThan(0.0005)
    expect(at(0.95)).toBeLessThan(0.002)
    expect(at(1)).toBeLessThan(0.01)
  })
})

describe("bands that come to lie over themselves", { timeout: 120_000 }, () => {
  const peaked = makeHeadFromAxes([1, 1, 1], "peaked")
  const round = makeHeadFromAxes([1, 1, 1], "round")
  const bandAlong = (
    head: Head,
    fromAlongMm: number,
    toAlongMm: number,
    behindMm: number,
    depthMm: number,
  ) => {
    const made = hairlineParting(head, { fromAlongMm, toAlongMm, behindMm })
    if (!("parting" in made)) throw new Error(made.refused)
    return { ...bandOf(made.parting, depthMm), taken: "behind" as const }
  }

  /** From 15 mm behind the hairline at the temple forward: the last 33 mm of its depth lie over bare skin. */
  const temple = bandAlong(round, 110, 170, 15, 48)
  const overSkin = { ...temple, taken: "front" as const }
  const receding = makeHeadFromAxes([1, 1, 1], "receding")
  const side = straightParting(receding, surfacePoint(0.638, 0.128), surfacePoint(0.474, -0.418))
  if (!("parting" in side)) throw new Error(side.refused)

  it.each([
    ["a panel 48 mm deep, most of it over bare skin", round, overSkin],
    ["a panel 48 mm deep at the side of a receding head", receding, bandOf(side.parting, 48)],
    ["a panel over the peak", peaked, bandAlong(peaked, -30, 30, 3, 14)],
    ["a panel over the peak, as deep as a hand is wide", peaked, bandAlong(peaked, -40, 40, 4, 40)],
    ["a band at the sideburn", round, bandAlong(round, 120, 190, 3, 8)],
    ["a band round the ear", round, bandAlong(round, 180, 240, 3, 8)],
  ])("count once, to 1 %: %s", (_, head, band) => {
    expect(Math.abs(bandAreaCm2(bandShape(band, head)) / onMesh(head, band) - 1)).toBeLessThan(0.01)
  })
})

describe("a weave whose tail dips 4 mm into a band of 20 mm, from 2 mm behind the hairline", {
  timeout: 120_000,
}, () => {
  const hair = evenHair(30)

  it.each(hairlineForms.map((form, i) => ({ form, head: heads[i] })))(
    "holds the hairs that stand 2 to 6 mm behind a $form hairline, as thinly as they do there",
    ({ head }) => {
      const made = hairlineParting(head, { fromAlongMm: 10, toAlongMm: 90, behindMm: 2 })
      if (!("parting" in made)) throw new Error(made.refused)
      const band: Band = { ...bandOf(made.parting, 20), taken: "behind" }
      // Stitches so fine that where each begins does not matter.
      const section = weaveOf(band, { stitchMm: 0.4, gapMm: 0.6, dipMm: 4 })
      const { hairs, partingMm } = measureSection(section, head, hair, tradeFigures)
      const dip = oracleBand(head, band, { start: 4, end: 4 })
      const standing = bandIntegral(head, dip, cellMm, (place) => densityAt(head, hair, tradeFigures, place))
      const picked = standing.integral * stitchedShare(section, partingMm)
      // 0.15 % is the worst measured.
      expect(Math.abs(hairs / picked - 1)).toBeLessThan(0.003)
      // The strip behind the hairline is sparser than the head: its mean density would count too many.
      expect(standing.integral / standing.areaCm2).toBeLessThan(0.9 * hair.densityPerCm2)
    },
  )
})
