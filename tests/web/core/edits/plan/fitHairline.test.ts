import { describe, expect, it } from "vitest"
import { hairlineForms } from "../../../../../geometry/scalp/hairlineLandmarks"
import type { Plan } from "../../../../../web/core/document/schema"
import { fitHairline } from "../../../../../web/core/edits/plan/fitHairline"
import { headOf } from "../../../../../web/core/figures/measured"
import { examplePlan } from "../../../../../web/core/file/examplePlan"
import { done, samplePlan } from "../../../../support/samples"

const example = examplePlan()

/** How far inside the hairline each parting begins, is halfway and ends, mm. */
const behindMm = (plan: Plan) =>
  plan.sections.flatMap(({ parting }) =>
    [0, parting.length >> 1, parting.length - 1].map(
      (i) => headOf(plan).hairline.coordinates(parting[i]).behindMm,
    ),
  )

describe("giving the head another hairline", () => {
  it("takes a finished face frame along to every form, each place about as far inside as it was", () => {
    const before = behindMm(example)
    for (const form of hairlineForms) {
      const fitted = done(fitHairline(form), example)
      expect(fitted.head.hairline.form).toBe(form)
      behindMm(fitted).forEach((mm, i) => {
        // Kept toward the crown, but told here square to a hairline that bends: 10 mm seen at 50 degrees is 6.4.
        if (before[i] < 25) expect(Math.abs(mm - before[i])).toBeLessThan(1 + 0.36 * before[i])
      })
    }
  })
  it("takes it from form to form and back", () => {
    const forms = [...hairlineForms, "receding", "straight", "round"] as const
    const back = forms.reduce<Plan>((plan, form) => done(fitHairline(form), plan), example)
    behindMm(back).forEach((mm, i) => {
      expect(Math.abs(mm - behindMm(example)[i])).toBeLessThan(0.5)
    })
  })
  it("leaves what lies on the crown where it was", () => {
    done(fitHairline("receding")).sections[1].parting.forEach((at, i) => {
      expect(at[0]).toBeCloseTo(samplePlan.sections[1].parting[i][0], 4)
      expect(at[1]).toBeCloseTo(samplePlan.sections[1].parting[i][1], 4)
    })
  })
})
