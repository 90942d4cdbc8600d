import { describe, expect, it } from "vitest"
import { visitWeeks } from "../../../../presets/formula/developers"
import { secondVisit, secondVisitDay } from "../../../../web/core/bowls/secondVisit"
import { visitsOfPlan } from "../../../../web/core/bowls/visits"
import { clearanceOf } from "../../../../web/core/cautions/clearance"
import type { Consultation } from "../../../../web/core/document/consultation"
import type { Plan } from "../../../../web/core/document/schema"
import { usualTiming } from "../../../../web/core/document/usualTiming"
import { openPlan, savePlan } from "../../../../web/core/file/planFile"
import { askedAll } from "../../../support/answers"
import { samplePlan } from "../../../support/samples"

const today = "2026-03-09"
/** From level 3 to 9, which no one visit with 20 or 30 vol of the house powder is expected to give in time. */
const state = { level: 3, history: [], porosity: "usual", stretch: "springs-back" } as const
const consultation: Consultation = askedAll(today, {
  hair: { top: { roots: state, midLengths: state, ends: state } },
  liftToLevel: 9,
  strandTests: [{ product: samplePlan.mixes[0].product, outcome: "held" }],
  passes: [{ rule: "henna", reason: "Seen.", by: "J" }],
})
const plan: Plan = {
  ...samplePlan,
  date: today,
  consultation,
  timing: {
    ...usualTiming,
    lift: null,
    strandTest: {
      product: samplePlan.mixes[0].product,
      developerVolume: 20,
      startLevel: 3,
      rows: [{ minutes: 20, level: 4 }],
    },
  },
  alarms: [{ wallAt: "2026-03-09T10:00:00Z", what: "faint" }],
}
const [first, second] = visitsOfPlan(plan)
const day = secondVisitDay(today)
const next = secondVisit(plan, { day, name: "Sample, visit 2", note: "Look first." })

describe("the second of two visits", () => {
  it("is asked for here, and begins where the first ends", () => {
    expect([first.fromLevel, second.toLevel > first.toLevel]).toEqual([3, true])
    expect(second.fromLevel).toBe(first.toLevel)
  })

  it("comes no sooner than the least weeks of common practice", () => {
    expect(visitWeeks.range[0]).toBe(4)
    expect(day).toBe("2026-04-06") // four weeks after 9 March
  })

  it("is a plan of its own with the same sections, the aim of that visit, and nothing stronger than today", () => {
    expect(next.id).not.toBe(plan.id)
    expect([next.name, next.note, next.date]).toEqual(["Sample, visit 2", "Look first.", "2026-04-06"])
    expect(next.sections).toBe(plan.sections)
    expect(next.consultation?.liftToLevel).toBe(second.toLevel)
    for (const [at, mix] of next.mixes.entries()) {
      expect(mix.developerVolume).toBeLessThanOrEqual(plan.mixes[at].developerVolume)
      expect(mix.developerVolume).toBeLessThanOrEqual(second.volume)
    }
    expect(next).not.toHaveProperty("alarms")
    expect(openPlan(savePlan(next)).ok).toBe(true)
  })

  it("knows that the hair was lightened, and not how it came out of it", () => {
    expect(next.consultation?.hair.top?.roots).toEqual({
      level: null,
      history: ["lightened"],
      porosity: null,
      stretch: null,
    })
    expect(next.timing?.strandTest).toBeNull()
    expect(next.consultation?.strandTests).toEqual([])
    expect(visitsOfPlan(next)).toEqual([])
  })

  it("asks again on its day what belongs to the day, and overrides nothing from the last time", () => {
    const onTheDay = clearanceOf(next, { moment: `${day}T10:00:00Z`, zone: "Europe/London" })
    expect(onTheDay.state).toBe("not-asked")
    const codes = onTheDay.notAsked.map((thing) => (thing.code === "question" ? thing.question : thing.code))
    expect(codes).toEqual(expect.arrayContaining(["scalp", "expecting", "faceRash", "asthma", "scalpToday"]))
    expect(next.consultation?.passes).toEqual([])
  })

  it("keeps what no day takes away: a yes, an age, a strand that failed", () => {
    const failed = { product: "Tub", outcome: "failed" as const }
    const worse = { ...plan, consultation: { ...consultation, strandTests: [failed] } }
    expect(secondVisit(worse, { day, name: "", note: "" }).consultation).toMatchObject({
      strandTests: [failed],
      ageYears: 34,
    })
  })
})
