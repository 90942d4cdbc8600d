import { describe, expect, it } from "vitest"
import { isFoil } from "../../../../../geometry/section/section"
import { kindOf } from "../../../../../geometry/section/sectionKinds"
import { newConsultation } from "../../../../../web/core/document/consultation"
import { isRefusal } from "../../../../../web/core/document/edit"
import type { Plan } from "../../../../../web/core/document/schema"
import { layTechnique, techniqueSections } from "../../../../../web/core/edits/lay/layTechnique"
import { emptyPlan } from "../../../../support/samples"
import { usualTechniques } from "../../../../support/techniques"

const asked = (rootDistanceMm: number | null): Plan => ({
  ...emptyPlan,
  consultation: { ...newConsultation(), rootDistanceMm },
})
const startsOn = (technique: (typeof usualTechniques)[number], plan: Plan) =>
  techniqueSections(technique, plan).filter(isFoil)

describe("where the product of a technique starts", () => {
  it("is tried on all twelve", () => {
    expect(usualTechniques).toHaveLength(12)
  })

  it.each(usualTechniques)("is as near the root as the client was asked for: $name", (technique) => {
    for (const wantedMm of [3, 9, 20, 35]) {
      const plan = layTechnique(technique)(asked(wantedMm))
      if (isRefusal(plan)) throw new Error(plan.refused.code)
      const foils = plan.sections.filter(isFoil)
      expect(foils.length).toBeGreaterThan(0)
      for (const foil of foils) {
        expect(foil.rootDistanceMm).toBe(wantedMm)
        expect(kindOf(foil).productStartMm(foil)).toBeGreaterThanOrEqual(wantedMm)
      }
    }
  })

  it.each(usualTechniques)("is the technique's own where nobody was asked: $name", (technique) => {
    const own = startsOn(technique, emptyPlan).map(({ rootDistanceMm }) => rootDistanceMm)
    expect(startsOn(technique, asked(null)).map(({ rootDistanceMm }) => rootDistanceMm)).toEqual(own)
  })

  it("keeps the steps between starts that a technique draws one behind the other", () => {
    const [technique] = usualTechniques
    const sections = technique.sections.map((row, i) => ({
      ...row,
      ...(row.treatment && { treatment: { ...row.treatment, rootDistanceMm: 10 + 5 * i } }),
    }))
    const starts = (plan: Plan) =>
      startsOn({ ...technique, sections }, plan).map((foil) => foil.rootDistanceMm)
    const own = starts(asked(null))
    expect(new Set(own).size).toBeGreaterThan(1)
    expect(starts(asked(4))).toEqual(own.map((mm) => mm - Math.min(...own) + 4))
  })
})
