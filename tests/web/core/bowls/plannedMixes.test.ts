import { describe, expect, it } from "vitest"
import { houseProducts } from "../../../../presets/formula/houseProducts"
import { mixesOfPlan } from "../../../../web/core/bowls/mixesOfPlan"
import { secondVisit } from "../../../../web/core/bowls/secondVisit"
import { visitsOfPlan } from "../../../../web/core/bowls/visits"
import { newConsultation } from "../../../../web/core/document/consultation"
import { newSalon } from "../../../../web/core/document/salon"
import type { Mix, Plan } from "../../../../web/core/document/schema"
import { usualTiming } from "../../../../web/core/document/usualTiming"
import { timedPlan } from "../../../../web/core/schedule/timedPlan"
import { samplePlan } from "../../../support/samples"

const [powder, , cream] = houseProducts
const [mixA] = samplePlan.mixes
/** All hair from one level to another. */
const lifted = (level: number, liftToLevel: number, plan: Plan = samplePlan): Plan => ({
  ...plan,
  consultation: {
    ...newConsultation(),
    hair: { top: { roots: { level, history: null, porosity: null, stretch: null } } },
    liftToLevel,
  },
})
/** The first foil in mix B, the others in A. */
const withB = (b: Partial<Mix>, a: Partial<Mix> = {}): Plan => ({
  ...samplePlan,
  mixes: [
    { ...mixA, ...a },
    { ...mixA, id: "B", ...b },
  ],
  sections: samplePlan.sections.map((section, at) =>
    "mix" in section && at === 0 ? { ...section, mix: "B" } : section,
  ),
})

describe("a mix of a plan", () => {
  it("counts its own sections and foils, and is mixed for them alone", () => {
    const [a, b] = mixesOfPlan(withB({}))
    expect([a.users, b.users]).toEqual([2, 1])
    expect([a.foils, b.foils]).toEqual([2, 1])
    expect([a.piece, b.piece]).toEqual(["foil", "foil"])
    expect(a.made?.bowls.flatMap(({ sections }) => sections)).toHaveLength(2)
    expect(b.made?.bowls.flatMap(({ sections }) => sections)).toEqual([samplePlan.sections[0].id])
  })

  it("is mixed at the minute the clock wants it, whichever bowl comes first", () => {
    const plan = withB({})
    const timed = timedPlan(plan)
    if (!timed.ok) throw new Error("the plan can be timed")
    for (const { mix, made } of mixesOfPlan(plan))
      expect(made?.bowls.map(({ atMin }) => atMin)).toEqual(
        timed.schedule.bowls.filter((bowl) => bowl.mix === mix.id).map(({ atMin }) => atMin),
      )
  })

  it("of a product without a sheet is mixed all the same, with no developer proposed and no price", () => {
    const [mix] = mixesOfPlan({ ...samplePlan, mixes: [{ ...mixA, product: "From a tub" }] })
    expect([mix.sheet, mix.proposed, mix.untimed]).toEqual([null, null, []])
    expect(mix.made?.bowls).toHaveLength(1)
    expect(mix.made?.cost ?? null).toBeNull()
  })

  it("that no foil uses is not mixed, and has its developer proposed all the same", () => {
    const plan = lifted(7, 10, { ...samplePlan, mixes: [mixA, { ...mixA, id: "B" }] })
    const [, b] = mixesOfPlan(plan)
    expect(b).toMatchObject({ users: 0, foils: 0, made: null, problems: [], untimed: [] })
    expect(b.proposed).toMatchObject({ kind: "chosen", volume: 20 })
  })

  it("has the next developer proposed where a strand of the same product gained too little in its longest time", () => {
    // One level is printed for 10 vol; a strand that gained a fifth of one in 45 minutes will not have it in time.
    const proposed = (product: string, level: number) => {
      const strandTest = { product, developerVolume: 10, startLevel: 7, rows: [{ minutes: 45, level }] }
      return mixesOfPlan({ ...lifted(7, 8), timing: { ...usualTiming, strandTest } })[0].proposed
    }
    expect(mixesOfPlan(lifted(7, 8))[0].proposed).toMatchObject({ volume: 10 })
    expect(proposed(powder.name, 7.2)).toMatchObject({
      volume: 20,
      why: { code: "lift-expected", weakerVolume: 10 },
    })
    expect(proposed(powder.name, 8)).toMatchObject({ volume: 10, why: { code: "lift-printed" } })
    expect(proposed("Another powder", 7.2)).toMatchObject({ volume: 10 })
  })
})

describe("the visits a lift takes", () => {
  // From 2 to 8 in the longest time of each: the powder gives 3 levels a visit with 20 vol, the cream 2.
  const far = (a: string, b: string) => lifted(2, 8, withB({ product: b }, { product: a }))

  it("are none where one visit gives it", () => {
    expect(visitsOfPlan(lifted(7, 9))).toEqual([])
    expect(() => secondVisit(lifted(7, 9), { day: "2026-04-06", name: "", note: "" })).toThrow(
      "One visit gives the lift wanted",
    )
  })

  it("are the most of any mix in use", () => {
    expect(visitsOfPlan(far(powder.name, powder.name))).toHaveLength(2)
    expect(visitsOfPlan(far(powder.name, cream.name))).toHaveLength(3)
    expect(visitsOfPlan(far(cream.name, powder.name))).toHaveLength(3)
  })

  it("ask nothing of a mix that no foil uses", () => {
    const unused = lifted(2, 8, { ...samplePlan, mixes: [mixA, { ...mixA, id: "B", product: cream.name }] })
    expect(visitsOfPlan(unused)).toHaveLength(2)
  })

  it("share the levels, each beginning where the one before ended", () => {
    const visits = (product: string) =>
      visitsOfPlan(far(product, product)).map(({ fromLevel, toLevel }) => [fromLevel, toLevel])
    expect(visits(powder.name)).toEqual([
      [2, 5],
      [5, 8],
    ])
    expect(visits(cream.name)).toEqual([
      [2, 4],
      [4, 6],
      [6, 8],
    ])
  })
})

describe("the second visit", () => {
  const made = (plan: Plan) => secondVisit(plan, { day: "2026-05-04", name: "Second", note: "" })

  it("is mixed no stronger than its own share asks for, and never stronger than today", () => {
    const [, second] = visitsOfPlan(lifted(2, 8))
    const volumes = (developerVolume: number) =>
      made(lifted(2, 8, { ...samplePlan, mixes: [{ ...mixA, developerVolume }] })).mixes.map(
        (mix) => mix.developerVolume,
      )
    expect(volumes(40)).toEqual([second.volume])
    expect(volumes(10)).toEqual([10])
  })

  it("leaves a mix whose product has no sheet as it is", () => {
    const plan = lifted(2, 8, withB({ product: "From a tub", developerVolume: 30 }))
    expect(made(plan).mixes[1].developerVolume).toBe(30)
  })

  it("takes over nothing of what was done today, and no clock that was never set", () => {
    const service = { ...lifted(2, 8), salon: newSalon() }
    expect(made(service)).not.toHaveProperty("timing")
    const timed = made({ ...service, timing: { ...usualTiming, lift: { fromLevel: 2, toLevel: 8 } } })
    expect(timed.timing).toEqual({ ...usualTiming, lift: null, strandTest: null })
  })
})
