import { describe, expect, it } from "vitest"
import { hairlineParting } from "../../../../geometry/parting/parting"
import type { Section } from "../../../../geometry/section/section"
import { tradeFigures } from "../../../../presets/formula/tradeFigures"
import { usualFoil } from "../../../../presets/placement/foils"
import { mixesOfPlan } from "../../../../web/core/bowls/mixesOfPlan"
import type { Plan } from "../../../../web/core/document/schema"
import { headOf, measured, netOf } from "../../../../web/core/figures/measured"
import { takenTwiceOf } from "../../../../web/core/figures/takenTwice"
import { emptyPlan } from "../../../support/samples"
import { sliceOf, weaveOf } from "../../../support/sections"
import { en } from "../../../support/words"

/** Bands laid by hand, so many mm behind the hairline and so many deep toward the face, the first on first. */
function planOf(
  ...bands: readonly { behindMm: number; depthMm: number; is?: (band: Section) => Section }[]
): Plan {
  const head = headOf(emptyPlan)
  const sections = bands.map(({ behindMm, depthMm, is = (band) => band }, i) => {
    const made = hairlineParting(head, { fromAlongMm: 20, toAlongMm: 70, behindMm })
    if ("refused" in made) throw new Error(made.refused)
    const depth = { start: depthMm, end: depthMm }
    const band = { id: `s${i + 1}`, parting: made.parting, taken: "front" as const, depthMm: depth, note: "" }
    return is(sliceOf(band, { mapNumber: i + 1, carrier: { ...foil, widthMm: 200 } }))
  })
  return { ...emptyPlan, sections }
}
const foil = { kind: "foil" as const, ...usualFoil }
const totals = (plan: Plan) => measured(plan).totals
const asWeave = (band: Section) =>
  weaveOf(band, { kind: "weave", stitchMm: 3, gapMm: 5, dipMm: 60, mapNumber: Number(band.id.slice(1)) })
const asLeftOut = ({ id, parting, taken, depthMm, note }: Section): Section => ({
  kind: "left-out",
  ...{ id, parting, taken, depthMm, note },
  name: "Veil",
})

describe("two slices that share 2 mm of their 6", () => {
  // From 14 to 20 mm and from 10 to 16 mm behind the hairline: together all hair from 10 to 20 mm.
  const both = planOf({ behindMm: 20, depthMm: 6 }, { behindMm: 16, depthMm: 6 })
  const whole = planOf({ behindMm: 20, depthMm: 10 })

  it("come to the one slice of 10 mm that takes the same hair, but for the corners at their ends", () => {
    for (const field of ["areaCm2", "hairG"] as const)
      expect(Math.abs(totals(both)[field] / totals(whole)[field] - 1), field).toBeLessThan(0.02)
    expect(Math.abs(totals(both).hairs.mid / totals(whole).hairs.mid - 1)).toBeLessThan(0.02)
  })

  it("come to the area of both less the area they share", () => {
    const [{ figures: first }, { figures: second }] = measured(both).sections
    const [{ areaCm2 }] = measured(both).overlaps
    expect(totals(both).areaCm2 / (first.areaCm2 + second.areaCm2 - areaCm2)).toBeCloseTo(1, 2)
  })

  it("stay as drawn in their own rows; the second gives the shared hair up", () => {
    const [first, second] = measured(both).sections
    expect(first.net).toBe(first.figures)
    expect(second.net.hairG / second.figures.hairG).toBeCloseTo(4 / 6, 1)
    expect(second.net.foils).toBe(second.figures.foils)
    expect(measured(both).takenTwice.hairG).toBeCloseTo(second.figures.hairG - second.net.hairG, 9)
    const told = takenTwiceOf(measured(both))
    expect(told).toMatchObject({ pairs: [[{ number: 1 }, { number: 2 }]], more: 0 })
    expect(told && en.placement.list.overlaps.takenTwice(told)).toMatch(
      /^\d.*\sg less: hair taken twice, by 1 and 2$/,
    )
  })

  it("give the hair to whichever goes on first", () => {
    const turned = { ...both, sections: both.sections.toReversed() }
    expect(netOf(both.sections[0], turned).hairG).toBeLessThan(netOf(both.sections[0], both).hairG)
    expect(totals(turned).hairG).toBeCloseTo(totals(both).hairG, 2)
  })
})

describe("a section laid twice on the same hair", () => {
  const one = planOf({ behindMm: 20, depthMm: 6 })
  const twice = planOf({ behindMm: 20, depthMm: 6 }, { behindMm: 20, depthMm: 6 })
  // Whole stitches of 3 mm and gaps of 5 between them, as many as the parting holds.
  const { partingMm } = measured(one).sections[0].figures
  const passedOver = 1 - (3 * Math.floor((partingMm + 5) / 8)) / partingMm

  it("takes the hair of one, and only the loss of its foil more", () => {
    expect(totals(twice).hairG).toBeCloseTo(totals(one).hairG, 2)
    expect(totals(twice).areaCm2).toBeCloseTo(totals(one).areaCm2, 1)
    expect(totals(twice).strandAreaCm2 / totals(one).strandAreaCm2).toBeCloseTo(1, 2)
    expect(totals(twice).productG.mid - totals(one).productG.mid).toBeCloseTo(tradeFigures.lossG.mid, 1)
  })

  it("as a weave finds its share of what the first passed over", () => {
    const weave = { behindMm: 20, depthMm: 6, is: asWeave }
    expect(totals(planOf(weave, weave)).hairG / totals(planOf(weave)).hairG).toBeCloseTo(1 + passedOver, 2)
  })

  it("as a weave after a slice finds nothing, and before it its own share, with the same hair in all", () => {
    const [slice, weave] = [
      { behindMm: 20, depthMm: 6 },
      { behindMm: 20, depthMm: 6, is: asWeave },
    ]
    const [after, before] = [planOf(slice, weave), planOf(weave, slice)]
    expect(netOf(after.sections[1], after).hairG).toBeCloseTo(0, 2)
    expect(netOf(before.sections[1], before).hairG / totals(one).hairG).toBeCloseTo(passedOver, 2)
    expect(totals(after).hairG).toBeCloseTo(totals(before).hairG, 2)
  })

  it("and a third time still takes no more", () => {
    const slice = { behindMm: 20, depthMm: 6 }
    expect(totals(planOf(slice, slice, slice)).hairG / totals(one).hairG).toBeCloseTo(1, 1.7)
  })
})

describe("hair left out", () => {
  const veil = { behindMm: 20, depthMm: 6, is: asLeftOut }
  const slice = { behindMm: 20, depthMm: 6 }
  it("is kept from the foils that go on after it, not from those before", () => {
    expect(totals(planOf(veil, slice)).hairG).toBeCloseTo(0, 2)
    expect(totals(planOf(slice, veil)).hairG).toBeCloseTo(totals(planOf(slice)).hairG, 9)
  })
})

it("is one sum everywhere: zones, mixes and bowls come to the totals", () => {
  const plan = planOf(
    { behindMm: 20, depthMm: 6 },
    { behindMm: 16, depthMm: 6 },
    { behindMm: 12, depthMm: 6 },
  )
  const { byZone, byMix, totals: all } = measured(plan)
  const sum = Object.values(byZone).reduce((total, { productG }) => total + productG.high, 0)
  expect(sum).toBeCloseTo(all.productG.high, 9)
  expect(byMix.get("A")?.productG.high).toBeCloseTo(all.productG.high, 9)
  expect(mixesOfPlan(plan)[0].made?.wantedG.high).toBeCloseTo(all.productG.high, 6)
})
