import { describe, expect, it } from "vitest"
import { clearanceOf, fieldOf, holdsMix } from "../../../../web/core/cautions/clearance"
import { newConsultation, questionNames } from "../../../../web/core/document/consultation"
import type { Plan } from "../../../../web/core/document/schema"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { exampleVisit } from "../../../../web/core/file/exampleVisit"
import { askedAll } from "../../../support/answers"

const day = "2026-03-09"
const nextDay = "2026-03-10"
const at = (moment: string) => ({ moment, zone: "UTC" })
const evening = at(`${day}T23:30:00Z`)
const night = at(`${nextDay}T00:30:00Z`)
const begunAt = `${day}T22:00:00.000Z`
const asked = askedAll(day)
const plan: Plan = { ...examplePlan(), date: day, consultation: asked }
const withTest = (known: typeof asked) => ({ ...plan, consultation: { ...known } })

describe("what holds a service that goes on", () => {
  it("is an open question as much as a stop, whatever the mix", () => {
    const told = clearanceOf({ ...plan, consultation: { ...asked, ageYears: null } }, evening, begunAt)
    expect(told.notAsked.map(fieldOf)).toEqual(["age"])
    expect([holdsMix(told, "A"), holdsMix(told, "B"), holdsMix(told)]).toEqual([true, true, true])
    expect(holdsMix({ stops: [], notAsked: [] }, "A")).toBe(false)
  })
  it("is each answer that is taken back, one by one", () => {
    // What the black henna did is only asked of someone who had it.
    for (const question of questionNames.filter((name) => name !== "blackHennaReaction")) {
      const { [question]: _, ...answers } = asked.answers
      expect(holdsMix(clearanceOf(withTest({ ...asked, answers }), evening, begunAt), "A"), question).toBe(
        true,
      )
    }
    for (const gone of [{ scalp: null }, { hair: newConsultation().hair }])
      expect(holdsMix(clearanceOf(withTest({ ...asked, ...gone }), evening, begunAt), "A")).toBe(true)
  })
  it("is any stop where nobody knows the mix", () => {
    const stop = clearanceOf({ ...plan, consultation: { ...asked, ageYears: 15 } }, evening).stops[0]
    const ofMixB = { stops: [{ ...stop, mixes: ["B"] }], notAsked: [] }
    expect([holdsMix(ofMixB, "A"), holdsMix(ofMixB, "B"), holdsMix(ofMixB)]).toEqual([false, true, true])
  })
})

describe("a service over midnight", () => {
  it("goes on with the answers it began with, and with those of the new day", () => {
    const before = clearanceOf(plan, evening, begunAt)
    const after = clearanceOf(plan, night, begunAt)
    expect([after.notAsked, after.stops.length]).toEqual([[], before.stops.length])
    const since = { ...asked, scalp: { seen: "calm" as const, on: nextDay } }
    expect(clearanceOf(withTest(since), night, begunAt).notAsked).toEqual([])
  })
  it("keeps its patch test and its override as well, and neither without it", () => {
    const visit = exampleVisit(evening)
    expect(clearanceOf(visit, evening).state).toBe("cleared")
    expect(clearanceOf(visit, night, begunAt).state).toBe("cleared")
    const { stops } = clearanceOf(visit, night)
    expect(stops.map(({ rule }) => rule)).toEqual(expect.arrayContaining(["alert-test", "unknown-content"]))
  })
  it("is nothing that a plan without it may lean on, nor one begun days ago", () => {
    expect(clearanceOf(plan, night).notAsked.length).toBeGreaterThan(5)
    expect(clearanceOf(plan, at("2026-03-11T00:30:00Z"), begunAt).notAsked.length).toBeGreaterThan(5)
    const older = { ...asked, scalp: { seen: "calm" as const, on: "2026-03-08" } }
    expect(clearanceOf(withTest(older), night, begunAt).notAsked.map(({ code }) => code)).toEqual(["scalp"])
  })
})
