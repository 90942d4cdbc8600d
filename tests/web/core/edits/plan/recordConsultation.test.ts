import { describe, expect, it } from "vitest"
import { clearanceOf, openTogether } from "../../../../../web/core/cautions/clearance"
import type { Consultation, Question } from "../../../../../web/core/document/consultation"
import { newPlan } from "../../../../../web/core/document/newPlan"
import {
  answerAloud,
  answerQuestions,
  clearAnswer,
  confirmAnswers,
} from "../../../../../web/core/edits/plan/answerQuestions"
import { recordConsultation } from "../../../../../web/core/edits/plan/setConsultation"
import { answersOn, askedAll } from "../../../../support/answers"
import { done } from "../../../../support/samples"

const now = { moment: "2026-06-10T10:00:00Z", zone: "Europe/London" }
const today = "2026-06-10"
const plan = (change: Partial<Consultation> = {}) => ({
  ...newPlan(new Date(now.moment)),
  date: today,
  consultation: askedAll(today, change),
})

describe("what stopped the plan once leaves a line", () => {
  const withdrawn = (before: Consultation, change: Partial<Consultation>) =>
    done(recordConsultation(change, now), { ...plan(), consultation: before }).consultation?.withdrawn

  it("when a failed strand test is removed: what, when and by whom", () => {
    const failed = askedAll(today, { strandTests: [{ product: "Powder", outcome: "failed" }] })
    expect(withdrawn(failed, { strandTests: [] })).toEqual([
      { rule: "strand-test-failed", about: "Powder", at: now.moment, by: "M." },
    ])
  })

  it("when a patch test that reacted is removed, of two the one that is", () => {
    const test = (product: string) => ({
      product,
      place: "",
      appliedAt: "2026-06-01T10:00:00Z",
      result: { outcome: "reacted" as const, readBy: "J", readAt: "2026-06-03T10:00:00Z" },
      validUntil: null,
      visit: today,
      changedSince: null,
    })
    const reacted = askedAll(today, { alertTests: [test("Toner"), test("Dye")] })
    expect(withdrawn(reacted, { alertTests: [test("Dye")] })).toEqual([
      { rule: "past-reaction", about: "Toner", at: now.moment, by: "M." },
    ])
  })

  it("when an answer that stopped is changed or cleared, an age put right", () => {
    const wheezed = {
      ...plan(),
      consultation: askedAll(today, { answers: answersOn(today, { asthma: "yes" }) }),
    }
    const changed = done(answerQuestions(["asthma"], "no", now), wheezed).consultation?.withdrawn
    const cleared = done(clearAnswer("asthma", now), wheezed).consultation?.withdrawn
    expect([changed, cleared].map((lines) => lines?.map(({ rule }) => rule))).toEqual([
      ["asthma"],
      ["asthma"],
    ])
    expect(withdrawn(askedAll(today, { ageYears: 15 }), { ageYears: 51 })).toMatchObject([
      { rule: "under-16" },
    ])
  })

  it("not when what an allergy is to is put into words, and when its answer is changed", () => {
    const allergy = (which: string) => ({ which, when: "", how: "" })
    const allergic = askedAll(today, {
      answers: answersOn(today, { otherAllergy: "yes" }),
      otherAllergy: allergy("la"),
    })
    expect(withdrawn(allergic, { otherAllergy: allergy("latex") })).toEqual([])
    expect(withdrawn(allergic, { otherAllergy: allergy("") })).toEqual([])
    const denied = { ...allergic.answers, ...answersOn(today, { otherAllergy: "no" }) }
    expect(withdrawn(allergic, { answers: denied })).toMatchObject([{ rule: "allergy", about: "la" }])
  })

  it("never for what did not stop it", () => {
    expect(withdrawn(askedAll(today), { ageYears: 40, finish: "cool" })).toEqual([])
  })
})

describe("no to the rest", () => {
  it("never answers breathing, hives, a rash, an allergy or pregnancy", () => {
    const open = openTogether(clearanceOf({ ...plan(), consultation: undefined }, now).notAsked)
    const breathing: Question[] = ["breathingReaction", "asthma", "colouristBreathing"]
    const alone: Question[] = [...breathing, "dyeAllergy", "otherAllergy", "faceRash", "expecting"]
    for (const question of alone) expect(open).not.toContain(question)
    expect(open).toHaveLength(12)
  })

  it("is signed where it was asked aloud, and leaves open what it may not answer", () => {
    const nothing = { ...plan(), consultation: undefined }
    const open = openTogether(clearanceOf(nothing, now).notAsked)
    const { consultation: known, ...rest } = done(answerAloud(open, "M.", now), nothing)
    expect(known?.signatures).toEqual([{ by: "M.", at: now.moment, questions: open }])
    expect(known?.askedBy).toBe("M.")
    const left = clearanceOf({ ...rest, consultation: known }, now).notAsked.map((thing) =>
      thing.code === "question" ? thing.question : thing.code,
    )
    expect(left).toEqual([
      "age",
      "scalp",
      "breathingReaction",
      "dyeAllergy",
      "otherAllergy",
      "faceRash",
      "expecting",
      "asthma",
      "colouristBreathing",
      "history",
      "stretch",
    ])
  })
})

it("confirms an inherited answer as it stands and never erases it", () => {
  const old = {
    ...plan(),
    consultation: askedAll("2026-03-09", { answers: answersOn("2026-03-09", { lenses: "yes" }) }),
  }
  const { answers } = done(confirmAnswers(["lenses", "asthma"], now), old).consultation ?? {}
  expect(answers?.lenses).toEqual({ said: "yes", on: today, visit: today })
  expect(answers?.asthma).toEqual({ said: "no", on: today, visit: today })
  expect(answers?.medicines?.on).toBe("2026-03-09")
})
