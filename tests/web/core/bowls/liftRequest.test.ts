import { describe, expect, it } from "vitest"
import { isFoil } from "../../../../geometry/section/section"
import { liftRequest } from "../../../../web/core/bowls/liftRequest"
import { type Consultation, newConsultation } from "../../../../web/core/document/consultation"
import type { Plan } from "../../../../web/core/document/schema"
import { usualTiming } from "../../../../web/core/document/usualTiming"
import { zoneOf } from "../../../../web/core/schedule/scheduleFromPlan"
import { framePlan } from "../../../support/framePlan"
import { samplePlan } from "../../../support/samples"

const foils = samplePlan.sections.filter(isFoil)
const [foil] = foils
const own = zoneOf(foil, samplePlan)
const state = (level: number | null, change: object = {}) => ({
  level,
  history: null,
  porosity: null,
  stretch: null,
  ...change,
})
const told = (change: Partial<Consultation>, plan: Plan = samplePlan): Plan => ({
  ...plan,
  consultation: { ...newConsultation(), ...change },
})
/** Level 7 where the foil lies, 4 and porous and lightened elsewhere. */
const elsewhere = own === "left" ? "right" : "left"
const dark = state(4, { porosity: "high", history: ["lightened"] })
const both = told({ hair: { [own]: { roots: state(7) }, [elsewhere]: { roots: dark } }, liftToLevel: 9 })

describe("what is wanted of the hair of some foils", () => {
  it("is unknown where nothing was said", () => {
    expect(liftRequest([foil], samplePlan)).toEqual({
      fromLevel: null,
      liftToLevel: null,
      hairline: false,
      fine: false,
      porous: false,
      lightened: false,
    })
  })

  it("goes by the hair they lie in", () => {
    expect(liftRequest([foil], both)).toMatchObject({
      fromLevel: 7,
      liftToLevel: 9,
      porous: false,
      lightened: false,
    })
  })

  it("goes, before there is a foil, by the darkest and the most delicate of all that was written down", () => {
    expect(liftRequest([], both)).toMatchObject({ fromLevel: 4, porous: true, lightened: true })
    const usual = told({ hair: { [own]: { roots: state(7, { porosity: "usual", history: ["coloured"] }) } } })
    expect(liftRequest([], usual)).toMatchObject({ fromLevel: 7, porous: false, lightened: false })
  })

  it("asks for gentleness where one of them takes hairline hair, and where the hair is fine: 45 to 60 µm", () => {
    const [slice] = framePlan.sections.filter(isFoil)
    expect(liftRequest([slice], framePlan).hairline).toBe(true)
    expect(liftRequest([...foils, slice], framePlan).hairline).toBe(true)
    const thick = (fibreUm: number) =>
      liftRequest([foil], { ...samplePlan, hair: { ...samplePlan.hair, fibreUm } }).fine
    expect([thick(60), thick(61)]).toEqual([true, false])
  })

  it("goes by the levels said for the clock only where both were asked of the hair too", () => {
    const timing = { ...usualTiming, lift: { fromLevel: 5, toLevel: 8 } }
    const wish = (change: Partial<Consultation>) => {
      const { fromLevel, liftToLevel } = liftRequest([foil], { ...told(change), timing })
      return [fromLevel, liftToLevel]
    }
    const hair = { [own]: { roots: state(7) } }
    expect(wish({ hair, liftToLevel: 9 })).toEqual([5, 8])
    expect(wish({ hair })).toEqual([7, null])
    expect(wish({ liftToLevel: 9 })).toEqual([null, 9])
  })
})
