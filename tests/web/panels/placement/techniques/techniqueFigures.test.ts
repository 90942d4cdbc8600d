import { describe, expect, it } from "vitest"
import { techniqueOf } from "../../../../../presets/techniques/technique"
import { techniques } from "../../../../../presets/techniques/techniques"
import { foilMin } from "../../../../../presets/timing/pace"
import { layTechnique } from "../../../../../web/core/edits/lay/layTechnique"
import { measured } from "../../../../../web/core/figures/measured"
import {
  figuresWords,
  techniqueFigures,
} from "../../../../../web/panels/placement/techniques/techniqueFigures"
import { done, emptyPlan, samplePlan } from "../../../../support/samples"

const hairline = techniqueOf(techniques[1])

describe("what a technique comes to", () => {
  it("is what the plan comes to once it is laid, whatever else is on the head", () => {
    const laid = measured(done(layTechnique(hairline), emptyPlan)).totals
    for (const plan of [emptyPlan, samplePlan])
      expect(techniqueFigures(hairline, plan)).toMatchObject({ foils: laid.foils, productG: laid.productG })
  })

  it("takes the minutes of its foils: ten slices at the usual pace", () => {
    const { placeMin } = techniqueFigures(hairline, emptyPlan)
    expect(placeMin).toEqual({
      low: 10 * foilMin.usual.low,
      mid: 10 * foilMin.usual.mid,
      high: 10 * foilMin.usual.high,
    })
    expect(figuresWords(techniqueFigures(hairline, emptyPlan))).toMatch(
      /^10 foils, .* g, 15–25 min to place$/,
    )
  })

  it("says for how much of it a head has no room", () => {
    const [section] = hairline.sections
    const nowhere = {
      ...section,
      parting: { run: "through" as const, spots: [3, 3.05].map((landmark) => ({ landmark, behindMm: -4 })) },
    }
    const words = figuresWords(techniqueFigures({ ...hairline, sections: [section, nowhere] }, emptyPlan))
    expect(words).toMatch(/^2 foils, .*; no room here for 2 sections$/)
  })
})
