import { describe, expect, it } from "vitest"
import { houseProducts } from "../../../../presets/formula/houseProducts"
import { tradeFigures } from "../../../../presets/formula/tradeFigures"
import { startingProduct } from "../../../../presets/plans/startingPlan"
import { type LearntFigures, sheetOf } from "../../../../web/core/document/salon"
import { setMix } from "../../../../web/core/edits/plan/setMix"
import { setSalon } from "../../../../web/core/edits/plan/setSalon"
import { measured } from "../../../../web/core/figures/measured"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { openPlan, savePlan } from "../../../../web/core/file/planFile"
import { done, emptyPlan, refusal, samplePlan } from "../../../support/samples"

const always = (grams: number) => ({ low: grams, mid: grams, high: grams })
const learnt: LearntFigures = {
  product: null,
  kind: null,
  weighings: 8,
  lossG: always(1),
  soakGPerG: always(0),
  coatMgPerCm2: always(0),
}
const kindsOf = (plan: typeof samplePlan) =>
  measured(plan).sections.map(({ figures }) => figures.productG.mid / Math.max(1, figures.foils))

describe("what the salon brings to a plan", () => {
  it("puts its own sheet before the house product of the same name", () => {
    const own = { ...houseProducts[0], longestMin: 37 }
    const plan = done(setSalon({ sheets: [own] }), emptyPlan)
    expect(sheetOf(startingProduct, plan)?.longestMin).toBe(37)
    expect(sheetOf(startingProduct, emptyPlan)?.longestMin).toBe(45)
    expect(sheetOf("Nothing of the kind", plan)).toBeNull()
  })

  it("weighs foils by what was learnt: 1 g a foil and nothing else", () => {
    const plan = done(setSalon({ learnt: [learnt] }))
    expect(kindsOf(plan)).toEqual([1, 1, 1, 0])
    expect(kindsOf(samplePlan)[0]).toBeGreaterThan(tradeFigures.lossG.mid)
  })

  it("takes what was learnt of the product before that of the kind, and both together before either", () => {
    const [mix] = samplePlan.mixes
    const rows = [
      learnt,
      { ...learnt, kind: "weave" as const, lossG: always(2) },
      { ...learnt, product: mix.product, lossG: always(3) },
      { ...learnt, product: mix.product, kind: "slice" as const, lossG: always(4) },
      { ...learnt, product: "Another", kind: "backcomb" as const, lossG: always(5) },
    ]
    const plan = done(setSalon({ learnt: rows }))
    expect(kindsOf(plan)).toEqual([4, 3, 3, 0])
    expect(kindsOf(done(setMix({ ...mix, product: "Another" }), plan))).toEqual([1, 2, 5, 0])
  })

  it("goes through the file door and back", () => {
    const plan = done(
      setSalon({ sheets: [houseProducts[1]], bottles: [10, 30], developerPrice: { amount: 8, forG: 1000 } }),
      examplePlan(),
    )
    expect(openPlan(savePlan(plan))).toMatchObject({ ok: true, plan: { salon: plan.salon } })
  })

  it("is refused with the field and the cure where a ratio runs backwards", () => {
    const sheet = { ...houseProducts[0], ratio: { low: 2.5, high: 1.5 } }
    expect(refusal(setSalon({ sheets: [sheet] }), emptyPlan)).toContain('expected no more than "high"')
  })
})
