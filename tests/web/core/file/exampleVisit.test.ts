import { describe, expect, it } from "vitest"
import { liftRequest } from "../../../../web/core/bowls/liftRequest"
import { tonersOfPlan } from "../../../../web/core/bowls/toners"
import { clearanceOf } from "../../../../web/core/cautions/clearance"
import { exampleVisit } from "../../../../web/core/file/exampleVisit"
import { openPlan, savePlan } from "../../../../web/core/file/planFile"
import { timedPlan } from "../../../../web/core/schedule/timedPlan"

const now = { moment: "2026-11-30T10:00:00Z", zone: "Europe/London" }

describe("the example as a visit of today", () => {
  const plan = exampleVisit(now)

  it("is cleared by its answers, a patch test and one override, and shows strength, lift and tone", () => {
    const { state, stops, notAsked, by, cautions } = clearanceOf(plan, now)
    expect([state, stops, notAsked]).toEqual(["cleared", [], []])
    expect(by).toMatchObject({ tests: 1, overrides: 1, askedBy: "M." })
    expect(cautions.map(({ rule }) => rule)).toContain("unknown-content")
    expect(liftRequest([], plan)).toMatchObject({ fromLevel: 7, liftToLevel: 8 })
    expect(tonersOfPlan(plan).some(({ choice }) => choice !== null)).toBe(true)
  })

  it("asks again what is of the day on the day after", () => {
    const tomorrow = { ...now, moment: "2026-12-01T10:00:00Z" }
    expect(clearanceOf(plan, tomorrow).state).not.toBe("cleared")
  })

  it("goes through the door like any plan, with a clock and no clash", () => {
    expect(openPlan(savePlan(plan)).ok).toBe(true)
    const timed = timedPlan(plan)
    expect(timed.ok && timed.conflicts).toEqual([])
  })
})
