import { describe, expect, it } from "vitest"
import { houseProducts } from "../../../../presets/formula/houseProducts"
import { withdrawnBetween, withWithdrawn } from "../../../../web/core/cautions/withdrawn"
import type { Consultation } from "../../../../web/core/document/consultation"
import type { Plan } from "../../../../web/core/document/schema"
import { answersOn, askedAll } from "../../../support/answers"
import { samplePlan } from "../../../support/samples"

const today = "2026-03-09"
const now = { moment: `${today}T10:00:00Z`, zone: "Europe/London" }
const told = (change: Partial<Consultation> = {}): Plan => ({
  ...samplePlan,
  date: today,
  consultation: askedAll(today, change),
})
const yes = (...names: ("asthma" | "otherAllergy" | "recentRelaxer")[]) =>
  answersOn(today, Object.fromEntries(names.map((name) => [name, "yes"])))
const allergic = (which: string) =>
  told({ answers: yes("otherAllergy"), otherAllergy: { which, when: "", how: "" } })

describe("what is taken back", () => {
  it("is written down with the moment and with who asked", () => {
    expect(withdrawnBetween(told({ answers: yes("asthma") }), told(), now)).toEqual([
      { rule: "asthma", at: now.moment, by: "M." },
    ])
  })

  it("goes by who asked before where nobody is named now, else by nobody", () => {
    const before = told({ answers: yes("asthma") })
    const by = (first: Plan, next: Plan) => withdrawnBetween(first, next, now).map((line) => line.by)
    expect(by(before, told({ askedBy: "" }))).toEqual(["M."])
    expect(by(before, told({ askedBy: "J." }))).toEqual(["J."])
    expect(by(told({ answers: yes("asthma"), askedBy: "" }), { ...told(), consultation: undefined })).toEqual(
      [""],
    )
    expect(by(before, { ...told(), consultation: undefined })).toEqual(["M."])
  })

  it("is nothing where the stop stays, nor where one comes", () => {
    expect(withdrawnBetween(told({ answers: yes("asthma") }), told({ answers: yes("asthma") }), now)).toEqual(
      [],
    )
    expect(withdrawnBetween(told(), told({ answers: yes("asthma") }), now)).toEqual([])
  })

  it("is a stop that was overridden as well", () => {
    const passes = [{ rule: "recent-relaxer", reason: "Seen.", by: "J", visit: today }]
    const overridden = told({ answers: yes("recentRelaxer"), passes })
    expect(withdrawnBetween(overridden, told(), now).map(({ rule }) => rule)).toEqual(["recent-relaxer"])
  })

  it("is not an allergy that is only put into other words", () => {
    expect(withdrawnBetween(allergic("latex"), allergic("latex gloves"), now)).toEqual([])
    expect(withdrawnBetween(allergic("latex"), told(), now)).toEqual([
      { rule: "allergy", about: "latex", at: now.moment, by: "M." },
    ])
  })

  it("tells a strand that failed with one product from one with another", () => {
    const failed = (product: string) => told({ strandTests: [{ product, outcome: "failed" }] })
    expect(withdrawnBetween(failed("Tub"), failed("Tube"), now)).toEqual([
      { rule: "strand-test-failed", about: "Tub", at: now.moment, by: "M." },
    ])
  })

  it("is no change of a mix, no test to come, no caution, and not what stands on the card", () => {
    const [mix] = samplePlan.mixes
    const strong: Plan = { ...told(), mixes: [{ ...mix, developerVolume: 40 }] }
    expect(withdrawnBetween(strong, told(), now)).toEqual([])
    const toner = { product: houseProducts[3].name, developerVolume: 10, parts: 2 }
    expect(withdrawnBetween({ ...told(), toning: { toner, rootShade: null } }, told(), now)).toEqual([])
    const lenses = told({ answers: answersOn(today, { lenses: "yes" }) })
    expect(withdrawnBetween(lenses, told(), now)).toEqual([])
    for (const kind of ["other", "dye"] as const) {
      const client = { ...samplePlan.client, allergies: [{ kind, to: "nickel", since: "" }] }
      expect(withdrawnBetween({ ...told(), client }, told(), now)).toEqual([])
    }
  })
})

describe("a step of undo or redo", () => {
  const line = { rule: "henna", at: "2026-03-08T10:00:00Z", by: "J." }

  it("that leaves the answers alone changes nothing", () => {
    const plan = told({ answers: yes("asthma") })
    const renamed = { ...plan, name: "Renamed" }
    expect(withWithdrawn(plan, renamed, now)).toBe(renamed)
  })

  it("writes down the answer that it takes back, and loses no line written before", () => {
    const before = told({ answers: yes("asthma"), withdrawn: [line] })
    const asthma = { rule: "asthma", at: now.moment, by: "M." }
    expect(withWithdrawn(before, told(), now).consultation?.withdrawn).toEqual([line, asthma])
    const again = withWithdrawn(before, told({ withdrawn: [line] }), now)
    expect(again.consultation?.withdrawn).toEqual([line, asthma])
  })

  it("keeps the line even where it leads to before anything was asked", () => {
    const after = withWithdrawn(told({ answers: yes("asthma") }), { ...told(), consultation: undefined }, now)
    expect(after.consultation?.withdrawn).toHaveLength(1)
    expect(after.consultation?.ageYears).toBeNull()
  })

  it("that takes back no stop gives the plan as it is", () => {
    const after = told({ withdrawn: [line] })
    expect(withWithdrawn(told({ finish: "cool" }), after, now)).toBe(after)
  })
})
