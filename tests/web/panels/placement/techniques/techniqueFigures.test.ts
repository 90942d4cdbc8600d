import { describe, expect, it } from "vitest"
import { foilMin } from "../../../../../presets/timing/pace"
import { usualTiming } from "../../../../../web/core/document/usualTiming"
import { layTechnique } from "../../../../../web/core/edits/lay/layTechnique"
import { measured } from "../../../../../web/core/figures/measured"
import { timedPlan } from "../../../../../web/core/schedule/timedPlan"
import { techniqueFigures } from "../../../../../web/panels/placement/techniques/techniqueFigures"
import { done, emptyPlan, samplePlan } from "../../../../support/samples"
import { usualTechnique, usualTechniques } from "../../../../support/techniques"
import { en } from "../../../../support/words"

const { comesTo } = en.techniques.panel
const hairline = usualTechnique("full-hairline")

describe("what a technique comes to", () => {
  it("is what the plan comes to once it is laid, whatever else is on the head", () => {
    const laid = measured(done(layTechnique(hairline), emptyPlan)).totals
    for (const plan of [emptyPlan, samplePlan])
      expect(techniqueFigures(hairline, plan)).toMatchObject({
        foils: laid.foils,
        low: laid.productG.low,
        high: laid.productG.high,
      })
  })

  it("takes the minutes of its foils: ten slices at the usual pace", () => {
    const figures = techniqueFigures(hairline, emptyPlan)
    expect(figures).toMatchObject({ minLow: 10 * foilMin.usual.low, minHigh: 10 * foilMin.usual.high })
    expect(comesTo(figures)).toMatch(/^10 foils, .* g, 15–25 min to place$/)
  })

  it("takes the minutes that the clock of the same plan takes to place them, at a learner’s pace and with wide foils too", () => {
    for (const technique of usualTechniques) {
      const learner = { ...emptyPlan, timing: { ...usualTiming, skill: "learner" } } as const
      const timed = timedPlan(done(layTechnique(technique), learner))
      if (!timed.ok) throw new Error("not timed")
      const sum = timed.service.foils.reduce((total, { placeMin }) => total + placeMin.high, 0)
      expect(techniqueFigures(technique, learner).minHigh, technique.id).toBeCloseTo(sum, 9)
    }
  })

  it("says for how much of it a head has no room", () => {
    const [section] = hairline.sections
    const nowhere = {
      ...section,
      parting: { run: "through" as const, spots: [3, 3.05].map((landmark) => ({ landmark, behindMm: -4 })) },
    }
    const words = comesTo(techniqueFigures({ ...hairline, sections: [section, nowhere] }, emptyPlan))
    expect(words).toMatch(/^2 foils, .*; no room here for 2 sections$/)
  })
})
