import { describe, expect, it } from "vitest"
import { isFoil } from "../../../../geometry/section/section"
import { houseProducts } from "../../../../presets/formula/houseProducts"
import { isMixedSo, proposeMixes } from "../../../../web/core/bowls/proposeMixes"
import { newConsultation } from "../../../../web/core/document/consultation"
import type { Mix, Plan } from "../../../../web/core/document/schema"
import { samplePlan } from "../../../support/samples"

const [, , cream] = houseProducts
const [mixA] = samplePlan.mixes
const additives = ["House bond drops (invented)"]
/** A slice, a weave and a backcombed section, each in the mix at its place. */
const inMixes = (...mixes: Partial<Mix>[]): Plan => ({
  ...samplePlan,
  mixes: mixes.map((mix, at) => ({ ...mixA, id: "ABC"[at], ...mix })),
  sections: samplePlan.sections
    .filter(isFoil)
    .map((section, at) => ({ ...section, mix: "ABC"[Math.min(at, mixes.length - 1)] })),
})
const lifted = (level: number, liftToLevel: number, plan: Plan): Plan => ({
  ...plan,
  consultation: {
    ...newConsultation(),
    hair: { top: { roots: { level, history: null, porosity: null, stretch: null } } },
    liftToLevel,
  },
})
const told = (plan: Plan) =>
  proposeMixes(plan).map(({ mix, foils, why }) => ({
    mix,
    foils: foils.map(({ mapNumber }) => mapNumber),
    why: why.map(({ code }) => code),
  }))

describe("mixes proposed for three small foils", () => {
  it("are one, lettered A, with every reason once: foils of 10 g are too few for a bowl each", () => {
    const [only, ...others] = told(lifted(7, 10, inMixes({})))
    expect(others).toEqual([])
    expect(only.foils).toEqual([1, 2, 3])
    expect(only.mix).toMatchObject({ id: "A", product: mixA.product, developerVolume: 20 })
    expect(only.why).toEqual(["lift-printed", "consistency", "joined"])
  })

  it("keep products apart, however small", () => {
    const proposed = told(inMixes({}, { product: cream.name }, {}))
    expect(proposed.map(({ mix, foils }) => [mix.id, mix.product, foils])).toEqual([
      ["A", mixA.product, [1, 3]],
      ["B", cream.name, [2]],
    ])
  })

  it("keep strengths apart, however small, where no level was said", () => {
    const proposed = told(inMixes({ developerVolume: 10 }, { developerVolume: 30 }, { developerVolume: 10 }))
    expect(proposed.map(({ mix, foils }) => [mix.developerVolume, foils])).toEqual([
      [10, [1, 3]],
      [30, [2]],
    ])
  })

  it("keep what is stirred in, and add nothing where nothing is", () => {
    expect(told(inMixes({ additives })).map(({ mix }) => mix.additives)).toEqual([additives])
    expect(told(inMixes({})).map(({ mix }) => mix.additives)).toEqual([undefined])
  })

  it("of a product without a sheet keep strength and ratio, and say that there is no sheet", () => {
    const own = {
      product: "From a tub",
      developerVolume: 15,
      ratio: { lightener: 1, developer: 3 },
      additives,
    }
    const proposed = proposeMixes(inMixes(own))
    expect(proposed.map(({ mix }) => mix)).toEqual([{ id: "A", ...own }])
    expect(proposed[0].why).toEqual([{ code: "no-sheet", product: "From a tub" }])
  })

  it("keep the strength planned where the lift takes several visits", () => {
    expect(
      told(lifted(2, 9, inMixes({ developerVolume: 10 }))).map(({ mix }) => mix.developerVolume),
    ).toEqual([10])
  })

  it("are none where two mixes were chosen for one strand by hand", () => {
    const plan = inMixes({}, {})
    const roots = { mix: "B", toMm: 30, first: "ends" as const }
    const sections = plan.sections.map((section) =>
      section.kind === "slice" ? { ...section, roots } : section,
    )
    expect(proposeMixes({ ...plan, sections })).toEqual([])
  })

  it("are none for no foil", () => {
    expect(proposeMixes({ ...samplePlan, sections: [] })).toEqual([])
  })
})

describe("a plan is mixed as proposed", () => {
  const plan = inMixes({}, { product: cream.name }, {})
  const proposed = proposeMixes(plan)
  const taken: Plan = {
    ...plan,
    // Lettered otherwise than proposed.
    mixes: proposed.map(({ mix }, at) => ({ ...mix, id: "XY"[at] })),
    sections: plan.sections.map((section) => {
      const at = proposed.findIndex(({ foils }) => foils.some(({ id }) => id === section.id))
      return { ...section, mix: "XY"[at] }
    }),
  }

  it("whatever the letters", () => {
    expect(isMixedSo(taken, proposeMixes(taken))).toBe(true)
    expect(isMixedSo(plan, proposed)).toBe(false)
  })

  it("only where every mix is as proposed and as many", () => {
    const [first, ...others] = taken.mixes
    expect(isMixedSo({ ...taken, mixes: [{ ...first, developerVolume: 40 }, ...others] }, proposed)).toBe(
      false,
    )
    expect(isMixedSo(taken, proposed.slice(1))).toBe(false)
    expect(isMixedSo({ ...taken, mixes: others }, proposed)).toBe(false)
  })
})
