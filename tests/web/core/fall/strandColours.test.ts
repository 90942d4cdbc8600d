import { expect, it } from "vitest"
import { pointsEach } from "../../../../geometry/strands/grow"
import { newConsultation, type Zone, zoneNames } from "../../../../web/core/document/consultation"
import { fallOf } from "../../../../web/core/fall/fall"
import { strandColours } from "../../../../web/core/fall/strandColours"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { shadesOfPlan } from "../../../../web/core/pigment/shadesOfPlan"
import { processorMs } from "../../../support/processorMs"

const plan = examplePlan()
const fall = fallOf(plan, 1)
const { strands, light, zones } = fall

const levels = (now: number, aimed: number, asked: { greyShare?: number; zone?: Zone } = {}) => {
  const zone = { roots: level(now), midLengths: level(now), ends: level(now) }
  return shadesOfPlan({
    consultation: {
      ...newConsultation(),
      liftToLevel: aimed,
      greyShare: asked.greyShare ?? 0,
      hair: Object.fromEntries((asked.zone ? [asked.zone] : zoneNames).map((name) => [name, zone])),
    },
  })
}
const level = (value: number) => ({ level: value, history: null, porosity: null, stretch: null })

const at = (bytes: Uint8Array, strand: number, mm: number) => {
  const k = Math.min(pointsEach - 1, Math.round((mm / strands.lengthsMm[strand]) * (pointsEach - 1)))
  return bytes[4 * (strand * pointsEach + k) + 1]
}
const all = Array.from({ length: strands.count }, (_, strand) => strand)
const lit = all.filter((strand) => light.by[strand] >= 0 && light.toMm[strand] - light.fromMm[strand] > 60)
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length

it("draws each level now in a colour of its own, and what is lifted lighter", () => {
  const dark = all.filter((strand) => light.by[strand] < 0)
  const greens = [3, 6, 7].map((now) => {
    const bytes = strandColours(fall, { shades: levels(now, 9), grownMm: 0 })
    return mean(dark.map((strand) => at(bytes, strand, 100)))
  })
  expect(greens[1] - greens[0]).toBeGreaterThan(30)
  expect(greens[2] - greens[1]).toBeGreaterThan(12)
  const bytes = strandColours(fall, { shades: levels(6, 9), grownMm: 0 })
  const middle = (strand: number) => (light.fromMm[strand] + light.toMm[strand]) / 2
  expect(mean(lit.map((strand) => at(bytes, strand, middle(strand))))).toBeGreaterThan(greens[1] + 50)
})

it("lets the root grow in: weeks on, the light starts so much lower, and no lower than that", () => {
  const shades = levels(4, 9)
  const [today, later] = [0, 30].map((grownMm) => strandColours(fall, { shades, grownMm }))
  for (const strand of lit.slice(0, 200)) {
    const justInside = light.fromMm[strand] + 18
    expect(at(today, strand, justInside)).toBeGreaterThan(at(later, strand, justInside) + 30)
    expect(at(later, strand, justInside + 36)).toBeGreaterThan(at(later, strand, justInside) + 30)
  }
})

it("shows a soft root of 20 mm", () => {
  const soft = { ...light, fromMm: light.fromMm.map(() => 20) }
  const bytes = strandColours({ ...fall, light: soft }, { shades: levels(4, 9), grownMm: 0 })
  const [root, below] = [5, 40].map((mm) => mean(lit.map((strand) => at(bytes, strand, mm))))
  expect(below - root).toBeGreaterThan(60)
})

it("draws as many white hairs as are told, strand by strand, in the light they give together", () => {
  const linear = (byte: number) =>
    byte / 255 <= 0.04045 ? byte / 255 / 12.92 : ((byte / 255 + 0.055) / 1.055) ** 2.4
  const reds = (greyShare: number) => {
    const bytes = strandColours(fall, { shades: levels(3, 9, { greyShare }), grownMm: 0 })
    return all.map((strand) => linear(bytes[4 * strand * pointsEach]))
  }
  const [none, some, allWhite] = [0, 0.3, 1].map((share) => mean(reds(share)))
  expect((some - none) / (allWhite - none)).toBeCloseTo(0.3, 1)
  expect(new Set(reds(0.3).map((red) => Math.round(red * 20))).size).toBeGreaterThan(4)
})

it("takes the level of its zone where one is told, and of all that is told elsewhere", () => {
  const told = shadesOfPlan({
    consultation: {
      ...newConsultation(),
      hair: { hairline: { roots: level(8) }, back: { roots: level(4), ends: level(6) } },
    },
  })
  expect(told.now.hairline).toEqual({ roots: 8, midLengths: 8, ends: 8 })
  expect(told.now.back).toEqual({ roots: 4, midLengths: 4, ends: 6 })
  expect(told.now.top).toEqual({ roots: 6, midLengths: 6, ends: 6 })
  expect(told.assumed).toEqual({ now: null, aimed: 9 })
  expect(shadesOfPlan({ consultation: undefined }).assumed).toEqual({ now: 5, aimed: 9 })
  expect(new Set(zones).size).toBe(5)
})

it("colours a head anew in a fraction of the time it takes to grow", async () => {
  const shades = levels(5, 9)
  const grows = await processorMs(() => fallOf({ ...plan, hair: { ...plan.hair, densityPerCm2: 221 } }, 1))
  const taken = await processorMs(() => strandColours(fall, { shades, grownMm: 0 }))
  expect(taken / grows).toBeLessThan(0.15)
})
