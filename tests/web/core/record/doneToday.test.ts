import { describe, expect, it } from "vitest"
import { isFoil } from "../../../../geometry/section/section"
import type { RecordedTap, ServiceRecord } from "../../../../web/core/document/serviceRecord"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { dayOfService, doneToday } from "../../../../web/core/record/doneToday"
import { say } from "../../../../web/words/say"
import { en } from "../../../support/words"

const plan = examplePlan()
const foils = plan.sections.filter(isFoil)

const on = (foil: string, atMs: number): RecordedTap => ({
  tap: { kind: "on", foil },
  atMs,
  wallAt: "2026-03-10T02:00:00Z",
  onAtMs: atMs,
  undone: false,
  note: null,
})
const service = (ids: readonly string[]): ServiceRecord => ({
  startedAt: "2026-03-10T02:00:00Z",
  foils: foils.map(({ id, mapNumber, kind }) => ({
    id,
    mapNumber,
    kind,
    limitMin: 45,
    firstLookMin: 10,
    plannedOnMin: 0,
    plannedMinutesOn: 26,
  })),
  log: ids.map((id, i) => on(id, 60_000 * i)),
  clockNotes: [],
})

describe("what was done", () => {
  it("counts the foils by kind and says where, without a gram or a volume", () => {
    const { day, isDone, lines, isToned } = doneToday(plan, "UTC")
    expect([day, isDone, isToned]).toEqual(["2026-03-09", false, false])
    expect(lines.map((line) => say(en.record.told.planned, line))).toEqual([
      "9 foils along your hairline, on top and at the sides: 6 fine slices, 1 woven piece and 2 soft, blended pieces.",
      "To be lightened with House powder (invented).",
    ])
  })
  it("counts what went on at the chair, on the day the salon's own clock showed", () => {
    const ids = foils.slice(0, 2).map(({ id }) => id)
    const done = doneToday({ ...plan, service: service(ids) }, "America/New_York")
    // Two in the morning in London is the evening before in New York.
    expect(done.day).toBe("2026-03-09")
    expect(done.isDone).toBe(true)
    expect(say(en.record.told.done, done.lines[0])).toBe("2 foils along your hairline: 2 fine slices.")
  })
  it("names the toner that was chosen", () => {
    const toner = { product: "House toner (invented)", developerVolume: 5, parts: 2 }
    const { isToned, lines } = doneToday({ ...plan, toning: { toner, rootShade: null } }, "UTC")
    expect(isToned).toBe(true)
    expect(lines.at(-1)).toEqual({ code: "toned", products: ["House toner (invented)"] })
  })
  it("is of the salon's own day for the next visit too, late in the evening east of Greenwich and early west of it", () => {
    const at = (startedAt: string, zone: string) =>
      dayOfService({ ...plan, service: { ...service([]), startedAt } }, zone)
    expect(at("2026-03-09T13:30:00Z", "Pacific/Auckland")).toBe("2026-03-10")
    expect(at("2026-03-10T02:00:00Z", "America/New_York")).toBe("2026-03-09")
    expect(dayOfService(plan, "Pacific/Auckland")).toBe(plan.date)
  })
})
