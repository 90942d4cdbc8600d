import { describe, expect, it } from "vitest"
import { copyOf, newPlan } from "../../../../web/core/document/newPlan"
import { openPlan, savePlan } from "../../../../web/core/file/planFile"

describe("a new plan", () => {
  const plan = newPlan(new Date(2026, 0, 5, 23, 59))
  it("can be saved and opened as it is", () => {
    expect(openPlan(savePlan(plan))).toEqual({ ok: true, plan })
  })
  it("is for the mean woman of the 1988 survey, with medium hair and 20 volume at 1 : 2", () => {
    expect(plan.head.size).toEqual({ kind: "caliper", lengthMm: 187.2, breadthMm: 144.4, heightMm: 123.5 })
    expect(plan.hair).toMatchObject({ densityPerCm2: 220, fibreUm: 70 })
    expect(plan.mixes).toMatchObject([
      { id: "A", developerVolume: 20, ratio: { lightener: 1, developer: 2 } },
    ])
  })
  it("is of the day it is where the salon is", () => expect(plan.date).toBe("2026-01-05"))
  it("has an id of its own, and so has a copy", () => {
    expect(newPlan(new Date()).id).not.toBe(newPlan(new Date()).id)
    expect(copyOf(plan).id).not.toBe(plan.id)
    expect({ ...copyOf(plan), id: plan.id }).toEqual(plan)
  })
})
