import { describe, expect, it } from "vitest"
import { isFoil } from "../../../../geometry/section/section"
import type { Plan } from "../../../../web/core/document/schema"
import { setTiming } from "../../../../web/core/edits/plan/setTiming"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { fixEdit } from "../../../../web/core/fixes/fixEdit"
import { findFixes } from "../../../../web/core/fixes/fixes"
import { timedPlan } from "../../../../web/core/schedule/timedPlan"
import { busyPlan } from "../../../support/busyPlan"
import { done, emptyPlan } from "../../../support/samples"

const clock = (plan: Plan) => {
  const timed = timedPlan(plan)
  if (!timed.ok) throw new Error(timed.problems[0].code)
  return timed
}
const rulesOf = (plan: Plan) => clock(plan).conflicts.map(({ code }) => code)

describe("a plan on the clock", () => {
  it("says why an empty plan has none", () => {
    expect(timedPlan(emptyPlan)).toEqual({
      ok: false,
      problems: [{ code: "no-foils" }],
    })
  })

  it("times each foil of the example in its order, and remembers it", () => {
    const plan = examplePlan()
    const { schedule } = clock(plan)
    expect(schedule.foils.map(({ id }) => id)).toEqual(plan.sections.filter(isFoil).map(({ id }) => id))
    expect(timedPlan(plan)).toBe(timedPlan(plan))
  })

  it("takes two pairs of hands and the booking from the plan", () => {
    const plan = examplePlan()
    const alone = clock(plan).schedule.lastOnMin
    expect(clock(done(setTiming({ hands: 2 }), plan)).schedule.lastOnMin).toBeLessThan(alone)
    expect(rulesOf(done(setTiming({ bookingMin: 30 }), plan))).toEqual(["booking"])
  })

  it("refuses a goal darker than the hair is now", () => {
    const timed = timedPlan(done(setTiming({ lift: { fromLevel: 8, toLevel: 6 } }), examplePlan()))
    expect(timed).toEqual({
      ok: false,
      problems: [{ code: "not-lighter", fromLevel: 8, toLevel: 6 }],
    })
  })

  it("names a product that has no sheet", () => {
    const { assumed } = clock({
      ...examplePlan(),
      mixes: examplePlan().mixes.map((mix) => ({ ...mix, product: "Tub" })),
    })
    expect(assumed).toContainEqual({ code: "no-sheet", mix: "A", product: "Tub", limitMin: 35 })
  })
})

describe("a cure as an edit", () => {
  /** 40 foils and one rinse: the last is not ready when the first must come off (common practice, no source). */
  const crowded = done(setTiming({ rinse: "together", skill: "usual" }), busyPlan(40))

  it("settles in the plan what it settled in the service, for every cure that can be taken", () => {
    const before = clock(crowded)
    expect(before.conflicts.length).toBeGreaterThan(0)
    for (const { code: rule } of before.conflicts) {
      const cures = findFixes(before.service, rule)
      expect(cures.length, rule).toBeGreaterThan(0)
      for (const cure of cures)
        expect(rulesOf(done(fixEdit(cure, before.service), crowded)), cure.code).not.toContain(rule)
    }
  })

  it("leaves a plan alone that it has nothing to change in", () => {
    const { service } = clock(crowded)
    const nothing = {
      code: "reorder",
      costMin: 0,
      after: service,
      left: [],
    } as const
    expect(done(fixEdit(nothing, service), crowded).sections).toEqual(crowded.sections)
  })
})
