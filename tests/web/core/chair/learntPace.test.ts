import { describe, expect, it } from "vitest"
import { foilsTimed, lessonsOf, paceOf } from "../../../../web/core/chair/learntPace"
import type { Plan } from "../../../../web/core/document/schema"
import type { RecordedTap, ServiceRecord } from "../../../../web/core/document/serviceRecord"
import { samplePlan } from "../../../support/samples"

const minute = 60_000
const on = (foil: string, atMin: number, by?: 1 | 2): RecordedTap => ({
  tap: { kind: "on", foil, ...(by && { by }) },
  atMs: atMin * minute,
  wallAt: "2026-03-09T10:00:00.000Z",
  onAtMs: atMin * minute,
  undone: false,
  note: null,
})
const [slice, weave, third] = samplePlan.sections.map(({ id }) => id)
const service = (day: number, log: RecordedTap[], change: Partial<ServiceRecord> = {}): ServiceRecord => ({
  startedAt: `2026-03-0${day}T10:00:00.000Z`,
  foils: [],
  log,
  clockNotes: [],
  ...change,
})
const served = (...services: ServiceRecord[]): Plan => {
  const earlier = services.slice(0, -1)
  const last = services.at(-1)
  return { ...samplePlan, earlier, ...(last && { service: last }) }
}

describe("the pace of the chair", () => {
  it("is nothing before a foil was timed", () => {
    expect(lessonsOf([samplePlan])).toEqual([])
    expect(lessonsOf([served(service(9, [on(slice, 4)]))])).toEqual([])
  })
  it("moves the kind that was timed, and that one alone", () => {
    // Usual 2 minutes weigh as 6 foils; one slice took 9: (6 x 2 + 9) / 7 = 3.
    const [lesson] = lessonsOf([served(service(9, [on(slice, 4), on(weave, 13)]))])
    const pace = paceOf(lesson, "usual")
    expect(pace.slice.mid).toBeCloseTo(3, 10)
    expect(pace.weave.mid).toBe(2)
    expect(pace.backcomb.mid).toBe(2.75)
  })
  it("comes from every service of every plan, and a copy of a plan does not teach twice", () => {
    const one = served(service(7, [on(slice, 0), on(weave, 3)]), service(8, [on(slice, 0), on(weave, 4)]))
    const other = { ...served(service(9, [on(slice, 0), on(weave, 5)])), id: "other" }
    const [lesson] = lessonsOf([one, other, { ...one, id: "copy" }])
    expect(lesson.minutes.slice).toEqual([3, 4, 5])
    expect(lesson.services).toBe(3)
    // (6 x 2 + 3 + 4 + 5) / 9 = 24 / 9
    expect(paceOf(lesson, "usual").slice.mid).toBeCloseTo(24 / 9, 10)
  })
  it("is each person's own: two pairs of hands work side by side", () => {
    // Ana: 0 to 3; Bo: 1 to 6. The taps lie between each other.
    const log = [on(slice, 0, 1), on(weave, 1, 2), on(third, 3, 1), on("gone", 6, 2)]
    const lessons = lessonsOf([served(service(9, log, { people: ["Ana", "Bo"] }))])
    expect(lessons.map(({ person, minutes }) => [person, minutes.slice, minutes.weave])).toEqual([
      ["Ana", [3], []],
      ["Bo", [], [5]],
    ])
    expect(lessons.map(foilsTimed)).toEqual([1, 1])
  })
  it("knows a foil that was taken out of the plan since by its record, and leaves out a pause", () => {
    const foils = [{ ...recorded, id: "gone", kind: "backcomb" as const }]
    const log = [on("gone", 0), on(slice, 4), on(weave, 60)]
    const [lesson] = lessonsOf([served(service(9, log, { foils }))])
    expect(lesson.minutes).toEqual({ slice: [], weave: [], backcomb: [4], painted: [] })
  })
})

const recorded = { mapNumber: 9, limitMin: 45, firstLookMin: 10, plannedOnMin: 0, plannedMinutesOn: 26 }
