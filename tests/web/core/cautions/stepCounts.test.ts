import { describe, expect, it } from "vitest"
import { notAsked } from "../../../../web/core/cautions/asking/notAsked"
import { stepCounts } from "../../../../web/core/cautions/stepCounts"
import {
  type AlertTest,
  type Consultation,
  newConsultation,
  questionNames,
} from "../../../../web/core/document/consultation"
import { answersOn, askedAll } from "../../../support/answers"
import { emptyPlan } from "../../../support/samples"

const today = "2026-03-09"
const days = { today, visit: today }
const counts = (known: Consultation, isMeasured = false, head = emptyPlan.head) =>
  stepCounts({ head }, known, notAsked(known, days), isMeasured)
/** Age, scalp and each question; what the black henna did is only asked of someone who had it. */
const plain = 2 + questionNames.length - 1

describe("how much of the consultation is done", () => {
  it("is nothing at first", () => {
    expect(counts(newConsultation())).toEqual({
      ask: { done: 0, of: plain },
      hair: { done: 0, of: 5 },
      head: { done: 0, of: 2 },
      goal: { done: 0, of: 5 },
    })
  })

  it("counts each answer; the hair's history and stretch belong to the hair", () => {
    const known = askedAll(today)
    expect(counts(known).ask).toEqual({ done: plain, of: plain })
    const { asthma: _, ...answers } = known.answers
    expect(counts({ ...known, answers, hair: {}, ageYears: null }).ask).toEqual({
      done: plain - 2,
      of: plain,
    })
  })

  it("asks one thing more for an allergy, two for black henna, one for a test read clear", () => {
    const allergic = askedAll(today, { answers: answersOn(today, { otherAllergy: "yes" }) })
    expect(counts(allergic).ask).toEqual({ done: plain, of: plain + 1 })
    const named = { ...allergic, otherAllergy: { which: "latex", when: "2019", how: "rash" } }
    expect(counts(named).ask).toEqual({ done: plain + 1, of: plain + 1 })
    const tattooed = askedAll(today, { answers: answersOn(today, { blackHennaTattoo: "yes" }) })
    expect(counts(tattooed).ask).toEqual({ done: plain + 1, of: plain + 2 })
    const test = (result: AlertTest["result"]): AlertTest => ({
      product: "Toner",
      place: "",
      appliedAt: "2026-03-06T09:00:00Z",
      result,
      validUntil: null,
      visit: today,
      changedSince: null,
    })
    const read = { readBy: "J", readAt: "2026-03-08T10:00:00Z" }
    const tested = (alertTest: AlertTest) => counts(askedAll(today, { alertTests: [alertTest] })).ask
    expect(tested(test({ outcome: "clear", ...read }))).toEqual({ done: plain, of: plain + 1 })
    expect(tested(test({ outcome: "reacted", ...read }))).toEqual({ done: plain, of: plain })
    expect(tested(test(null))).toEqual({ done: plain, of: plain })
  })

  it("knows the hair as soon as one place of it was looked at", () => {
    const roots = { level: null, history: null, porosity: null, stretch: null }
    const hair = (change: object) =>
      counts({ ...newConsultation(), hair: { left: { roots }, top: { roots: { ...roots, ...change } } } })
        .hair.done
    expect(hair({})).toBe(0)
    expect(hair({ level: 7 })).toBe(1)
    expect(hair({ history: [] })).toBe(1)
    expect(hair({ porosity: "usual", stretch: "springs-back" })).toBe(2)
    expect(counts({ ...newConsultation(), greyShare: 0 }).hair.done).toBe(1)
  })

  it("knows the head by its measures and its parting, which may be none", () => {
    expect(counts(newConsultation(), true).head.done).toBe(1)
    expect(counts(newConsultation(), true, { ...emptyPlan.head, wornParting: [] as never }).head.done).toBe(2)
  })

  it("knows the goal by each of its five things", () => {
    const goal = (change: Partial<Consultation>) => counts({ ...newConsultation(), ...change }).goal.done
    for (const one of [
      { liftToLevel: 9 },
      { finish: "cool" },
      { brightest: ["hairline"] },
      { rootDistanceMm: 5 },
      { upkeepWeeks: 10 },
    ] as Partial<Consultation>[])
      expect(goal(one)).toBe(1)
  })
})
