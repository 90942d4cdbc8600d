import { describe, expect, it } from "vitest"
import { houseProducts } from "../../../../presets/formula/houseProducts"
import { writePlan } from "../../../../web/core/file/planFile"
import { salonForPlans } from "../../../../web/core/weighing/salonOfPlan"
import { salonProblem } from "../../../../web/core/weighing/salonProblem"
import { emptySalonShelf, readSalonShelf } from "../../../../web/core/weighing/salonRecord"
import { keptWeighing as weighing } from "../../../support/keptWeighing"
import { samplePlan } from "../../../support/samples"

describe("what a salon kept and cannot be read", () => {
  const kept = { ...emptySalonShelf(), bottles: [20, 40], weighings: [weighing, { ...weighing, id: "" }] }

  it("is one row of a list, and all others stay", () => {
    const { salon, unread } = readSalonShelf(kept)
    expect(salon.weighings).toEqual([weighing])
    expect(salon.bottles).toEqual([20, 40])
    expect(unread).toEqual([{ field: "weighings", value: { ...weighing, id: "" } }])
  })

  it("is a list of strengths with one too many", () => {
    const bottles = Array.from({ length: 21 }, (_, i) => i + 1)
    const { salon, unread } = readSalonShelf({ ...kept, weighings: [], bottles })
    expect(salon.bottles).toHaveLength(20)
    expect(unread).toEqual([{ field: "bottles", value: 21 }])
  })
})

describe("a change of what the salon keeps", () => {
  it("is refused where it would not be read again, with its place", () => {
    const [sheet] = houseProducts
    const additive = { name: "Oil", gPerG: 0.1, replacesDeveloper: false }
    const full = { ...sheet, additives: Array(11).fill(additive) }
    expect(salonProblem({ ...emptySalonShelf(), sheets: [full] })?.path).toBe("sheets[0].additives")
    const cut = { ...weighing, name: `${"x".repeat(59)}\ud83d` }
    expect(salonProblem({ ...emptySalonShelf(), weighings: [cut] })?.path).toBe("weighings[0].name")
    expect(salonProblem({ ...emptySalonShelf(), weighings: [weighing] })).toBeNull()
  })

  it("teaches nothing that no plan could hold: milligrams for grams", () => {
    for (const productG of [17, 60, 170, 600, 1700, 4900]) {
      const inMg = Array.from({ length: 30 }, (_, i) => ({
        ...weighing,
        id: `w${i}`,
        panels: 1,
        hairG: 0.1,
        strandAreaCm2: 2 + i,
        productG,
      }))
      const salon = { ...emptySalonShelf(), weighings: inMg }
      const problem = salonProblem(salon)
      if (problem) expect(problem.path).toMatch(/^weighings\[\d+\]\.productG$/)
      else expect(writePlan({ ...samplePlan, salon: salonForPlans(salon) }).ok).toBe(true)
    }
  })
})
