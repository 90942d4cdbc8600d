import { describe, expect, it } from "vitest"
import { densityAt, linearGPerCm } from "../../geometry/hair/hair"
import { makeHeadFromAxes } from "../../geometry/scalp/head"
import { surfacePoint } from "../../geometry/surface/frames"
import { areaElement } from "../../geometry/surface/surfacePatch"
import type { Vec3 } from "../../geometry/surface/vec3"
import { densityPerCm2, fibreUm } from "../../presets/client/hairTypes"
import { tradeFigures } from "../../presets/formula/tradeFigures"
import { regrowthMm } from "../../presets/placement/foils"
import { groupBy } from "../support/groupBy"
import { readCsv } from "../support/readCsv"
import { evenHair } from "../support/sections"

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length
const { hairGPerCm3 } = tradeFigures

/** Diameter in um: ug a cm, and cm2 of lateral surface a gram, worked out at 1.32 g/cm3 (Robbins). */
const table = [
  [50, 25.9, 606],
  [60, 37.3, 505],
  [70, 50.8, 433],
  [80, 66.4, 379],
  [90, 84.0, 337],
  [100, 103.7, 303],
]

describe("the mass and the surface of a fibre", () => {
  it.each(table)("%d um: %d ug/cm, %d cm2/g", (um, ugPerCm, cm2PerG) => {
    const gPerCm = linearGPerCm(um, hairGPerCm3)
    expect(gPerCm * 1e6).toBeCloseTo(ugPerCm, 1)
    expect((Math.PI * um * 1e-4) / gPerCm).toBeCloseTo(cm2PerG, 0)
  })

  it("make 152 to 267 g of 100,000 to 175,000 hairs of 70 um and 30 cm", () => {
    expect(100_000 * 30 * linearGPerCm(70, hairGPerCm3)).toBeCloseTo(152, 0)
    expect(175_000 * 30 * linearGPerCm(70, hairGPerCm3)).toBeCloseTo(267, 0)
  })
})

describe("1566 measured cross-sections (Lasisi 2021)", () => {
  const rows = readCsv("hair_cross_sections.csv")
  const areas = rows.map(({ area_um2 }) => Number(area_um2))
  const acrossUm = (areaUm2: number) => Math.sqrt((4 * areaUm2) / Math.PI)

  it("have the mean area whose circle our fibre is: 3.5 % more mass than their mean diameter gives", () => {
    const massRatio = mean(areas) / ((Math.PI / 4) * mean(areas.map(acrossUm)) ** 2)
    expect(massRatio).toBeCloseTo(1.035, 3)
    const gPerCm = linearGPerCm(acrossUm(mean(areas)), hairGPerCm3)
    expect(gPerCm).toBeCloseTo(1.32 * mean(areas) * 1e-8, 12)
  })

  it("put medium in the middle third of people, fine below and coarse above", () => {
    const people = [...groupBy(rows, ({ subject }) => `${subject}`).values()]
      .map((hairs) => mean(hairs.map(({ area_um2 }) => acrossUm(Number(area_um2)))))
      .sort((a, b) => a - b)
    const [third, twoThirds] = [
      people[Math.floor(people.length / 3)],
      people[Math.floor((2 * people.length) / 3)],
    ]
    expect(fibreUm.fine.value).toBeLessThan(third)
    expect(fibreUm.medium.value).toBeGreaterThan(third)
    expect(fibreUm.medium.value).toBeLessThan(twoThirds)
    expect(fibreUm.coarse.value).toBeGreaterThan(twoThirds)
  })
})

describe("ten measured men (1983)", () => {
  it("have medium hair on the mean", () => {
    const means = readCsv("scalp_hair_diameter_1983.csv").map((row) =>
      Number(row.scalp_hair_diameter_um_mean),
    )
    expect(Math.abs(mean(means) - fibreUm.medium.value)).toBeLessThan(1)
  })
})

describe("20 counted women (1977)", () => {
  const counts = readCsv("scalp_fibre_counts_1977.csv").map(({ fibres_per_cm2 }) => Number(fibres_per_cm2))

  it("are 6 low, 8 medium and 6 high, as near to quarters as counts that tie allow", () => {
    const within = ([least, most]: readonly [number, number]) =>
      counts.filter((count) => count >= least && count <= most).length
    const { low, medium, high } = densityPerCm2
    expect([low, medium, high].map(({ range }) => within(range))).toEqual([6, 8, 6])
    for (const { value, range } of Object.values(densityPerCm2)) {
      expect(value).toBeGreaterThanOrEqual(range[0])
      expect(value).toBeLessThanOrEqual(range[1])
    }
  })
})

/** Micrometres a day, the means of three groups of adults (Loussouarn, El Rawadi, Genain 2005, Int J Dermatol 44 Suppl 1:6-9). */
describe("the new growth of ten weeks", () => {
  const grownMm = (umPerDay: number) => (umPerDay / 1000) * 70

  it("is what was measured, to half a millimetre: 367 um a day, from 280 to 411", () => {
    const { value, range } = regrowthMm
    expect(Math.abs(grownMm(367) - value)).toBeLessThan(0.5)
    expect(Math.abs(grownMm(280) - range[0])).toBeLessThan(0.5)
    expect(Math.abs(grownMm(411) - range[1])).toBeLessThan(0.5)
  })
})

describe("how far a head may be from the word chosen for it", () => {
  it("is 175 to 300 hairs a cm2 about the 223 of whole scalps (Barman 1965), to the last figure of the factor", () => {
    const { low, mid, high } = tradeFigures.hairsFactor
    expect(mid).toBe(1)
    expect(Math.abs(low - 175 / 223)).toBeLessThan(0.005)
    expect(Math.abs(high - 300 / 223)).toBeLessThan(0.005)
  })
})

/** Hairs and cm2 of the scalp where a place of it counts, summed over the map. */
function countOver(isCounted: (place: Vec3, edgeMm: number) => boolean) {
  const head = makeHeadFromAxes([1, 1, 1], "round")
  const hair = evenHair(30, { densityPerCm2: densityPerCm2.medium.value })
  const step = 0.04
  let [hairs, cm2] = [0, 0]
  for (let u = -2.38; u < 2.4; u += step)
    for (let v = -2.38; v < 2.4; v += step) {
      const at = surfacePoint(u, v)
      if (!head.hairline.contains(at)) continue
      const place = head.surface.pointAt(at)
      if (!isCounted(place, head.hairline.distanceMm(place))) continue
      const cellCm2 = (step * step * areaElement(head.surface, at)) / 100
      cm2 += cellCm2
      hairs += cellCm2 * densityAt(head, hair, tradeFigures, place)
    }
  return { hairs, cm2, mean: hairs / cm2 }
}

describe("the hairs of a head of medium density", () => {
  const whole = countOver(() => true)

  it("are on the mean of the head what the word says, and the 223 +- 4 of whole scalps (Barman 1965)", () => {
    expect(whole.mean / densityPerCm2.medium.value).toBeCloseTo(1, 2)
    expect(Math.abs(whole.mean - 223)).toBeLessThan(4)
  })

  it("are at the temple the 211 that 20 women had there, to its standard error of 12 (1977)", () => {
    const temple = countOver(([, y, z], edgeMm) => edgeMm > 15 && y > 0 && y < 45 && z > 45 && z < 65)
    expect(temple.cm2).toBeGreaterThan(10)
    expect(Math.abs(temple.mean - 211.1)).toBeLessThan(52.8 / Math.sqrt(20))
  })

  it("go down from vertex to occiput to temple, as published for 21 origins (Loussouarn 2005), and lie within 175 to 300", () => {
    const vertex = countOver(([, y, z]) => z > 105 && y < 0)
    const occiput = countOver(([, y, z], edgeMm) => edgeMm > 15 && y < -80 && z < 60)
    const temple = countOver(([, y, z], edgeMm) => edgeMm > 15 && y > 0 && y < 45 && z > 45 && z < 65)
    expect(vertex.mean).toBeGreaterThan(occiput.mean)
    expect(occiput.mean).toBeGreaterThan(temple.mean)
    for (const { mean } of [vertex, occiput, temple]) {
      expect(mean).toBeGreaterThan(175)
      expect(mean).toBeLessThan(300)
    }
  })

  it("are between the 100,000 of textbooks, which nobody counted, and the 164,000 of the 1977 paper", () => {
    // By hand: 573 cm2 at 220.
    expect(whole.hairs / (573 * 220)).toBeCloseTo(1, 1.7)
    expect(whole.hairs).toBeGreaterThan(100_000)
    expect(whole.hairs).toBeLessThan(164_000)
  })
})
