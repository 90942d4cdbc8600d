import { describe, expect, it } from "vitest"
import { isFoil } from "../../../../geometry/section/section"
import { mixesOfPlan } from "../../../../web/core/bowls/mixesOfPlan"
import type { Plan } from "../../../../web/core/document/schema"
import { setTiming } from "../../../../web/core/edits/plan/setTiming"
import type { FixKind } from "../../../../web/core/fixes/fix"
import { fixEdit } from "../../../../web/core/fixes/fixEdit"
import { findFixes } from "../../../../web/core/fixes/fixes"
import type { ConflictRule } from "../../../../web/core/schedule/conflicts"
import { timedPlan } from "../../../../web/core/schedule/timedPlan"
import { busyPlan } from "../../../support/busyPlan"
import { done } from "../../../support/samples"

const clock = (plan: Plan) => {
  const timed = timedPlan(plan)
  if (!timed.ok) throw new Error(timed.problems[0].code)
  return timed
}
const rulesOf = (plan: Plan) => clock(plan).conflicts.map(({ code }) => code)
function cured(plan: Plan, rule: ConflictRule, kind: FixKind): Plan {
  const { service } = clock(plan)
  const cure = findFixes(service, rule).find((each) => each.code === kind)
  if (!cure) throw new Error(`No cure ${kind}`)
  return done(fixEdit(cure, service), plan)
}

describe("a bowl mixed afresh", () => {
  // 8 foils at 2 minutes in bowls good for 45; in a break of 36 from minute 10 the first one grows too old.
  const slices = busyPlan(20).sections.filter(({ kind }) => kind === "slice")
  const plan = done(setTiming({ breaks: [{ fromMin: 10, toMin: 46 }] }), {
    ...busyPlan(1),
    sections: slices.slice(0, 8),
  })
  const after = cured(plan, "pot-life", "fresh-bowl")

  it("settles the conflict in the plan, in one edit", () => {
    expect(rulesOf(plan)).toEqual(["pot-life"])
    expect(rulesOf(after)).toEqual([])
  })
  it("begins at the first foil that comes too late, and is weighed out as it is timed", () => {
    // Prepared at 4; on at 4, 6 and 8, placed at 10; three come off after the break, and the fourth goes on.
    const bowls = clock(after).schedule.bowls.map(({ foils }) => foils)
    const [mix] = mixesOfPlan(after)
    expect(bowls[0]).toHaveLength(3)
    expect(mix.made?.bowls.map(({ sections }) => sections)).toEqual(bowls)
    expect(mix.made?.bowls[1].atMin).toBe(47.5)
  })
  it("is shared out as usual again when nobody wants it", () =>
    expect(rulesOf(done(setTiming({ freshAt: [] }), after))).toEqual(["pot-life"]))
})

describe("foils kept for another day", () => {
  const crowded = done(setTiming({ rinse: "together" }), busyPlan(40))
  it("stay in the plan, and come off today's clock", () => {
    const rule = rulesOf(crowded)[0]
    const { service } = clock(crowded)
    const cure = findFixes(service, rule).find(({ code }) => code === "another-day")
    if (!cure) return
    const after = done(fixEdit(cure, service), crowded)
    expect(after.later?.filter(isFoil).map(({ id }) => id)).toEqual(cure.left)
    expect(after.sections.filter(isFoil)).toHaveLength(40 - cure.left.length)
  })
})

describe("a booking that is too short", () => {
  const short = done(setTiming({ bookingMin: 60 }), busyPlan(12))
  it("is kept by leaving the hair damp, and the plan says so", () => {
    const after = cured(short, "booking", "later-end")
    expect(after.timing?.bookingMin).toBeGreaterThan(60)
    expect(rulesOf(after)).toEqual([])
    const long = done(setTiming({ bookingMin: 90 }), busyPlan(12))
    expect(cured(long, "booking", "no-drying").timing?.isDried).toBe(false)
  })
})
