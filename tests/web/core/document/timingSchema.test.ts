import { describe, expect, it } from "vitest"
import type { ServiceRecord } from "../../../../web/core/document/serviceRecord"
import { usualTiming } from "../../../../web/core/document/usualTiming"
import { setService } from "../../../../web/core/edits/plan/setService"
import { openPlan, savePlan } from "../../../../web/core/file/planFile"
import { done, samplePlan } from "../../../support/samples"
import { en } from "../../../support/words"

const wallAt = "2026-03-09T10:00:00.000Z"
const seen = { level: 7.5, stretch: "ok", comfort: "warm", moist: true } as const
const tapped = { onAtMs: null, undone: false, note: null, wallAt }
const service: ServiceRecord = {
  startedAt: wallAt,
  foils: [
    { id: "s1", mapNumber: 1, limitMin: 45, firstLookMin: 10, plannedOnMin: 4, plannedMinutesOn: 26.5 },
  ],
  log: [
    { ...tapped, tap: { kind: "mixed" }, atMs: 1000 },
    { ...tapped, tap: { kind: "on", foil: "s1" }, atMs: 61_001, onAtMs: 61_001 },
    { ...tapped, tap: { kind: "looked", foil: "s1", seen }, atMs: 661_001 },
    { ...tapped, tap: { kind: "alarm", what: "burning" }, atMs: 700_000, undone: true },
  ],
  clockNotes: [{ atMs: 70_000, wallAt, note: { code: "slept-or-set-forward", byMs: 40_000 } }],
}
const problem = (timing: object) => {
  const opened = openPlan(JSON.stringify({ ...JSON.parse(savePlan(samplePlan)), timing }))
  return opened.ok ? "" : opened.problems.map(en.problems.clause).join(" ")
}

describe("the clock in a plan's file", () => {
  it("comes back as it was, with what happened at the chair", () => {
    const timing = {
      ...usualTiming,
      breaks: [{ fromMin: 40, toMin: 55 }],
      strandTest: { product: "Tub", developerVolume: 20, startLevel: 6, rows: [{ minutes: 10, level: 7 }] },
    }
    const plan = { ...samplePlan, timing, service }
    expect(openPlan(savePlan(plan))).toEqual({ ok: true, plan })
  })
  it("keeps the service before beside the last, and every new field of the clock", () => {
    const next = { ...service, startedAt: "2026-04-20T10:00:00.000Z", people: ["Ana", "Bo"] }
    const once = done(setService(service))
    const again = done(setService(next), once)
    expect(again.earlier).toEqual([service])
    expect(done(setService({ ...next, log: [] }), again).earlier).toEqual([service]) // the same one, written again
    const placing = { low: 1, mid: 2, high: 3 }
    const timing = {
      ...usualTiming,
      people: ["Ana", "Bo"],
      secondPace: { slice: placing, weave: placing, backcomb: placing },
      breaks: [{ fromMin: 40, toMin: 55, of: 2 as const }],
      heatC: 38,
      freshAt: ["s1"],
    }
    const plan = { ...again, timing }
    expect(openPlan(savePlan(plan))).toEqual({ ok: true, plan })
  })
  it("names a level above the scale, a pace of 0 and a break that is no minute", () => {
    const placing = { low: 0, mid: 2, high: 3 }
    expect(problem({ ...usualTiming, lift: { fromLevel: 6, toLevel: 11 } })).toContain(
      "target level: expected 1 to 10, found 11",
    )
    expect(
      problem({ ...usualTiming, pace: { slice: placing, weave: placing, backcomb: placing } }),
    ).toContain("expected 0.1 to 60 minutes, found 0")
    expect(problem({ ...usualTiming, breaks: [{ fromMin: -5, toMin: 10 }] })).toContain(
      "from minute: expected 0 to 1,440 minutes, found -5",
    )
  })
})
