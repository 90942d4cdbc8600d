import { describe, expect, it } from "vitest"
import type { RecordedTap } from "../../../web/plan/serviceRecord"
import { learntPace } from "../../../web/service/learntPace"
import { samplePlan } from "../plan/samples"

const minute = 60_000
const on = (foil: string, atMin: number): RecordedTap => ({
  tap: { kind: "on", foil },
  atMs: atMin * minute,
  wallAt: "2026-03-09T10:00:00.000Z",
  onAtMs: atMin * minute,
  undone: false,
  note: null,
})
const [slice, weave] = samplePlan.sections.map(({ id }) => id)
const withLog = (...log: RecordedTap[]) => ({
  ...samplePlan,
  service: { startedAt: "2026-03-09T10:00:00.000Z", foils: [], log, clockNotes: [] },
})

describe("the pace of the chair", () => {
  it("is nothing before a foil was timed", () => {
    expect(learntPace(samplePlan)).toBeNull()
    expect(learntPace(withLog(on(slice, 4)))).toBeNull()
  })
  it("moves the kind that was timed, and that one alone", () => {
    // Usual 2 minutes weigh as 6 foils; one slice took 9: (6 x 2 + 9) / 7 = 3.
    const pace = learntPace(withLog(on(slice, 4), on(weave, 13)))
    expect(pace?.slice.mid).toBeCloseTo(3, 10)
    expect(pace?.weave.mid).toBe(2)
    expect(pace?.backcomb.mid).toBe(2.75)
  })
})
