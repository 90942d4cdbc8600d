import { describe, expect, it } from "vitest"
import { isFoil } from "../../../../geometry/section/section"
import { houseProducts } from "../../../../presets/formula/houseProducts"
import { tonerBowlOf } from "../../../../web/core/bowls/tonerBowl"
import { tonersOfPlan, usualChoice } from "../../../../web/core/bowls/toners"
import { type Consultation, newConsultation } from "../../../../web/core/document/consultation"
import { newSalon } from "../../../../web/core/document/salon"
import type { Plan } from "../../../../web/core/document/schema"
import { netOf } from "../../../../web/core/figures/measured"
import { framePlan } from "../../../support/framePlan"
import { emptyPlan, samplePlan } from "../../../support/samples"

const [, , , toner, rootShade] = houseProducts
const toned = (change: Partial<Consultation>, plan: Plan = samplePlan): Plan => ({
  ...plan,
  toning: { toner: usualChoice(toner), rootShade: usualChoice(rootShade) },
  consultation: { ...newConsultation(), finish: "cool", liftToLevel: 9, ...change },
})
const melt = (rootMeltMm: number, plan?: Plan) => tonersOfPlan(toned({ rootMeltMm }, plan))[0]

describe("what a product is mixed with where nobody has said", () => {
  it("is the weakest of its developers, and parts inside its sheet: 2, or the nearest it allows", () => {
    const developers = [20, 10, 30].map((volume) => ({ volume, levels: null }))
    const of = (low: number, high: number) => usualChoice({ ...toner, developers, ratio: { low, high } })
    expect(of(1, 3)).toEqual({ product: toner.name, developerVolume: 10, parts: 2 })
    expect(of(2.5, 3).parts).toBe(2.5)
    expect(of(1, 1.5).parts).toBe(1.5)
  })

  it("is nothing for what goes on as it is, and for what lists no developer", () => {
    const alone = { product: toner.name, developerVolume: null, parts: 0 }
    expect(usualChoice({ ...toner, kind: "direct-toner" })).toEqual(alone)
    expect(usualChoice({ ...toner, developers: [] })).toEqual(alone)
  })
})

describe("a bowl of toner", () => {
  it("is none before a product is chosen, and none where there is no hair for it", () => {
    const unchosen = { ...toned({}), toning: undefined }
    expect(tonersOfPlan(unchosen).map(({ choice, bowl }) => [choice, bowl])).toEqual([[null, null]])
    expect(tonersOfPlan(unchosen).map(tonerBowlOf)).toEqual([null])
    const [none] = tonersOfPlan(toned({}, emptyPlan))
    expect([none.wantedG.high, none.bowl, tonerBowlOf(none)]).toEqual([0, null, null])
  })

  it("of one shade goes on mids and hairline, for the hair of all foils", () => {
    const [one, ...others] = tonersOfPlan(toned({}, framePlan))
    const hairG = framePlan.sections
      .filter(isFoil)
      .reduce((sum, foil) => sum + netOf(foil, framePlan).hairG, 0)
    expect(others).toEqual([])
    expect(one.tones.map(({ zone }) => zone)).toEqual(["mids", "hairline"])
    expect(one.wantedG.mid).toBeCloseTo(2 * hairG, 9)
  })

  it("that goes on alone says its grams and no developer", () => {
    const direct = { ...toner, id: "d", name: "Direct", kind: "direct-toner" as const, developers: [] }
    const plan: Plan = {
      ...toned({}),
      salon: { ...newSalon(), sheets: [direct] },
      toning: { toner: usualChoice(direct), rootShade: null },
    }
    const [{ wantedG, bowl }] = tonersOfPlan(plan)
    expect(bowl?.developerG).toBe(0)
    expect(tonersOfPlan(plan).map(tonerBowlOf)).toEqual([
      { code: "toner-alone", product: "Direct", tonerG: bowl?.lightenerG, clearG: 0, wantedG },
    ])
  })
})

describe("a root melt", () => {
  it("coats the hair as far as it is drawn down, and no further than it is long", () => {
    expect(melt(40).wantedG.mid).toBeCloseTo(4 * melt(10).wantedG.mid, 9)
    const short: Plan = {
      ...samplePlan,
      hair: { ...samplePlan.hair, lengthCm: { front: 5, sides: 5, back: 5 } },
    }
    expect(melt(80, short).wantedG.mid).toBeCloseTo(melt(50, short).wantedG.mid, 9)
  })

  it("goes on all hair of the bands, what a weave leaves out too", () => {
    const only = (kind: string): Plan => ({
      ...samplePlan,
      sections: samplePlan.sections.filter((section) => section.kind === kind),
    })
    const [weave] = only("weave").sections.filter(isFoil)
    const { hairs, shareTaken, hairG, lengthCm } = netOf(weave, only("weave"))
    expect(shareTaken).toBeLessThan(0.9)
    // The taken hair weighs hairG along its length; all hair of the band is that by the share taken.
    expect(hairs).toBeGreaterThan(0)
    expect(melt(10, only("weave")).wantedG.low).toBeCloseTo(hairG / shareTaken / lengthCm, 1)
  })

  it("has the root shade in its bowl and the toner in none of it", () => {
    const bowls = tonersOfPlan(toned({ rootMeltMm: 25 })).map(tonerBowlOf)
    expect(bowls.map((bowl) => bowl?.product)).toEqual([rootShade.name, toner.name])
  })
})
