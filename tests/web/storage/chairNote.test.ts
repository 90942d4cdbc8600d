import { describe, expect, it } from "vitest"
import { type LiveService, liveServiceOf } from "../../../web/core/chair/liveService"
import { laterOf } from "../../../web/storage/chairNote"

const live = (revision: number, elapsedMs = 0): LiveService => ({
  planId: "p",
  startedAt: "2026-03-09T10:00:00.000Z",
  planned: [],
  chair: {
    foils: [],
    elapsedMs,
    last: { load: "a", monotonicMs: 0, wallMs: Date.parse("2026-03-09T10:00:00Z") },
    log: [],
    clockNotes: [],
    revision,
  },
  endedAt: null,
})
const found = (rev: string, value: LiveService) => ({ rev, value })

describe("the chair after a page that went away", () => {
  it("goes on from whichever writing got further: a note of long ago loses to the database", () => {
    expect(laterOf(found("note", live(3)), found("kept", live(5)))?.rev).toBe("kept")
    expect(laterOf(found("note", live(6)), found("kept", live(5)))?.rev).toBe("note")
    expect(laterOf(found("note", live(5, 9)), found("kept", live(5, 4)))?.rev).toBe("note")
    const ended = { ...live(5), endedAt: "2026-03-09T12:00:00.000Z" }
    expect(laterOf(found("note", live(5, 9)), found("kept", ended))?.rev).toBe("kept")
    const next = { ...live(1), startedAt: "2026-03-16T10:00:00.000Z" }
    expect(laterOf(found("note", live(40)), found("kept", next))?.rev).toBe("kept")
    expect(laterOf(null, null)).toBeNull()
  })

  it("is not taken up from what would break the screen", () => {
    expect(liveServiceOf(live(1))).toEqual(live(1))
    const { log: _, ...noLog } = live(1).chair
    expect(liveServiceOf({ ...live(1), chair: noLog })).toBeNull()
    expect(liveServiceOf({ ...live(1), chair: { ...live(1).chair, elapsedMs: null } })).toBeNull()
    expect(liveServiceOf({ ...live(1), startedAt: "soon" })).toBeNull()
  })
})
