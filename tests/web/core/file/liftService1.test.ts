import { describe, expect, it } from "vitest"
import { openPlan, savePlan } from "../../../../web/core/file/planFile"
import { servedPlan } from "../../../support/servedPlan"

/** A plan as version 1 wrote it: what was said and touched in English words. */
function version1(note: string, what: string): string {
  const { service, consultation: _, ...plan } = JSON.parse(savePlan(servedPlan()))
  const log = service.log.map((entry: { tap: { kind: string } }) =>
    entry.tap.kind === "alarm" ? { ...entry, note, tap: { kind: "alarm", what } } : entry,
  )
  const wallAt = "2026-03-09T10:20:00.000Z"
  const clockNotes = [{ atMs: 5, wallAt, note }]
  return JSON.stringify({
    ...plan,
    version: 1,
    service: { ...service, log, clockNotes },
    alarms: [{ wallAt, what }],
  })
}

function opened(text: string) {
  const result = openPlan(text)
  if (!result.ok) throw new Error(JSON.stringify(result.problems))
  return result.plan
}

describe("a plan of version 1", () => {
  it("keeps its words, and the titles of the red button become names", () => {
    const plan = opened(version1("The device slept for 40 seconds.", "Splash in the eye"))
    const words = { code: "in-words", words: "The device slept for 40 seconds." }
    expect(plan.version).toBe(2)
    expect(plan.service?.clockNotes[0].note).toEqual(words)
    expect(plan.service?.log.find(({ tap }) => tap.kind === "alarm")).toMatchObject({
      note: words,
      tap: { kind: "alarm", what: "eye" },
    })
    expect(plan.alarms).toMatchObject([{ what: "eye" }])
  })
  it("keeps a step in the words it was written in", () => {
    const step = "Faint: Loosen the gown. Fresh air."
    expect(opened(version1("", step)).alarms).toMatchObject([{ what: "other", words: step }])
  })
})
