import { describe, expect, it } from "vitest"
import { hairlineParting } from "../../../../../geometry/parting/parting"
import { newSection } from "../../../../../web/core/document/newSection"
import { setHair } from "../../../../../web/core/edits/plan/setHair"
import { setHead } from "../../../../../web/core/edits/plan/setHead"
import { freeMixLetter, removeMix, setMix } from "../../../../../web/core/edits/plan/setMix"
import { setPlanDetails } from "../../../../../web/core/edits/plan/setPlanDetails"
import { changeSection } from "../../../../../web/core/edits/sections/changeSections"
import { headOf } from "../../../../../web/core/figures/measured"
import { done, emptyPlan, refusal, samplePlan } from "../../../../support/samples"

const mixB = { id: "B", product: "House clay", developerVolume: 10, ratio: { lightener: 1, developer: 1.5 } }

describe("mixes", () => {
  it("are added under a new letter and changed under their own", () => {
    const plan = done(setMix(mixB))
    expect(plan.mixes.map(({ id }) => id)).toEqual(["A", "B"])
    expect(done(setMix({ ...mixB, developerVolume: 6 }), plan).mixes[1].developerVolume).toBe(6)
    expect(freeMixLetter(plan)).toBe("C")
  })
  it("are not taken out while a foil is to be coated with them", () => {
    const plan = done(changeSection("s2", { treatment: { mix: "B" } }), done(setMix(mixB)))
    expect(refusal(removeMix("B"), plan)).toBe("Mix B is used by foil 2. Give it another mix first.")
    expect(refusal(removeMix("A"), plan)).toBe("Mix A is used by foils 1 and 3. Give them another mix first.")
  })
  it("are refused stronger than any developer sold", () => {
    expect(refusal(setMix({ ...mixB, developerVolume: 60 }))).toBe(
      "Mix 2, developer: expected 1 to 40 vol, found 60.",
    )
  })
})

describe("the client", () => {
  it("keeps sections the same objects when the name or the hair changes", () => {
    expect(done(setPlanDetails({ name: "Halo" })).sections).toBe(samplePlan.sections)
    expect(done(setHair({ fibreUm: 62 })).hair).toEqual({ ...samplePlan.hair, fibreUm: 62 })
  })
  it("is known by initials only", () => {
    expect(refusal(setPlanDetails({ client: { initials: "Josephine" } }))).toBe(
      'Client, initials: expected one line of at most 6 letters, found "Josephine".',
    )
  })
  it("may have another head under the same plan", () => {
    const size = { kind: "caliper", lengthMm: 196, breadthMm: 151, heightMm: 131 } as const
    expect(done(setHead({ size })).head).toEqual({ size, hairline: { form: "round" } })
  })
  it("is refused a head no one has", () => {
    const size = { kind: "caliper", lengthMm: 240, breadthMm: 115, heightMm: 170 } as const
    expect(refusal(setHead({ size }))).toMatch(/^Head, size: /)
  })
  it("is refused a hairline that would leave a foil on the bare forehead", () => {
    const made = hairlineParting(headOf(emptyPlan), { fromAlongMm: 30, toAlongMm: 75, behindMm: 2 })
    if ("refused" in made) throw new Error(made.refused)
    const plan = { ...emptyPlan, sections: [newSection("slice", made.parting, emptyPlan)] }
    expect(refusal(setHead({ hairline: { form: "receding" } }), plan)).toMatch(
      /^Foil 1: expected a place inside/,
    )
  })
})
