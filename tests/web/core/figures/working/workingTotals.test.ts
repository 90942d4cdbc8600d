import { describe, expect, it } from "vitest"
import { workingStarts } from "../../../../../presets/placement/workingSections"
import { layTechnique } from "../../../../../web/core/edits/lay/layTechnique"
import { startWorkingSections } from "../../../../../web/core/edits/working/addWorkingPartings"
import { moveWorkingSection } from "../../../../../web/core/edits/working/orderWorkingSections"
import { measured } from "../../../../../web/core/figures/measured"
import { workingTotals } from "../../../../../web/core/figures/working/workingTotals"
import { timedPlan } from "../../../../../web/core/schedule/timedPlan"
import { done, emptyPlan } from "../../../../support/samples"
import { usualTechnique } from "../../../../support/techniques"

const plan = done(
  layTechnique(usualTechnique("temple-to-temple")),
  done(startWorkingSections(workingStarts[0]), emptyPlan),
)

describe("the totals by working section", () => {
  const totals = workingTotals(plan)
  const sum = (of: (total: (typeof totals)[number]) => number) =>
    totals.reduce((all, total) => all + of(total), 0)
  it("add up to the plan's", () => {
    const whole = measured(plan).totals
    expect(sum(({ foils }) => foils.foils)).toBe(whole.foils)
    expect(sum(({ foils }) => foils.areaCm2)).toBeCloseTo(whole.areaCm2, 8)
    expect(sum(({ foils }) => foils.productG.mid)).toBeCloseTo(whole.productG.mid, 8)
  })
  it("count the minutes of the clock to place the foils", () => {
    const timed = timedPlan(plan)
    if (!timed.ok) throw new Error("not timed")
    const minutes = timed.service.foils.reduce((all, { placeMin }) => all + placeMin.high, 0)
    expect(sum(({ placeMin }) => placeMin?.high ?? Number.NaN)).toBeCloseTo(minutes, 8)
  })
  it("are those of three foils a side in front, and of none behind", () => {
    expect(totals.map(({ foils }) => foils.foils)).toEqual([3, 3, 0, 0])
    for (const { areaCm2 } of totals) expect(areaCm2).toBeGreaterThan(50)
  })
})

it("lets the clock work the foils in the new order when a working section is worked first", () => {
  const onOrder = (of: typeof plan) => {
    const timed = timedPlan(of)
    if (!timed.ok) throw new Error("not timed")
    return timed.schedule.foils.toSorted((a, b) => a.onAtMin - b.onAtMin).map(({ id }) => id)
  }
  expect(onOrder(plan)).toEqual(["s1", "s2", "s3", "s4", "s5", "s6"])
  expect(onOrder(done(moveWorkingSection(1, -1), plan))).toEqual(["s4", "s5", "s6", "s1", "s2", "s3"])
})
