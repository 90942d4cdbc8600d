import fc from "fast-check"
import { describe, expect, it } from "vitest"
import type { Chair, Tap } from "../../../../web/core/chair/chair"
import { passTime, startChair, tapChair } from "../../../../web/core/chair/chairClock"
import { dueWithin, plannedAndReal, soFarOf } from "../../../../web/core/chair/chairDue"
import { foilRecords } from "../../../../web/core/chair/chairRecord"
import type { LookSeen } from "../../../../web/core/document/serviceRecord"
import { planService } from "../../../../web/core/schedule/timing"
import { chairSaid } from "../../../../web/session/chair/chairSaid"
import { foilsAlike, timedService } from "../../../support/timedService"
import { en } from "../../../support/words"

const minute = 60_000
const at = (minutes: number) => ({
  load: "one",
  monotonicMs: minutes * minute,
  wallMs: 1e12 + minutes * minute,
})
const foils = ["a", "b", "c", "d"].map((id, at) => ({
  id,
  mapNumber: at + 1,
  limitMin: 45,
  firstLookMin: 10,
}))
const fine: LookSeen = { level: 7, stretch: "ok", comfort: "ok", moist: true }

type Step = readonly [minutes: number, tap: Tap | { kind: "undo" }]
const tapAt = (chair: Chair, [minutes, tap]: Step) =>
  tapChair(chair, tap, { at: at(minutes), revision: chair.revision })
const played = (...steps: readonly Step[]) =>
  steps.reduce((chair, step) => tapAt(chair, step).chair, startChair(foils, at(0)))
const on = (foil: string): Tap => ({ kind: "on", foil })
const off = (foil: string): Tap => ({ kind: "off", foil })
const looked = (foil: string, change: Partial<LookSeen> = {}): Tap => ({
  kind: "looked",
  foil,
  seen: { ...fine, ...change },
})
const recordOf = (chair: Chair, foil: string) => {
  const record = foilRecords(chair).get(foil)
  if (!record) throw new Error(`No foil ${foil}`)
  return record
}

describe("a service as it happens", () => {
  it("keeps first contact, looks, coats and off", () => {
    const chair = played(
      [1, { kind: "mixed" }],
      [2, on("a")],
      [4, on("b")],
      [12, looked("a")],
      [13, { kind: "re-coated", foil: "a" }],
      [30, off("a")],
    )
    expect(recordOf(chair, "a")).toMatchObject({
      onAtMs: 2 * minute,
      offAtMs: 30 * minute,
      recoated: 1,
      isTapped: true,
    })
    expect(recordOf(chair, "a").looks).toEqual([{ atMs: 12 * minute, seen: fine }])
    expect(recordOf(chair, "c").onAtMs).toBeNull()
    expect(chair.log.map(({ wallMs }) => wallMs - 1e12)).toEqual(
      [1, 2, 4, 12, 13, 30].map((each) => each * minute),
    )
  })
  it("rinses all that are on", () => {
    const chair = played([2, on("a")], [4, on("b")], [20, off("a")], [33, { kind: "rinsed" }])
    expect(recordOf(chair, "a").offAtMs).toBe(20 * minute)
    expect(recordOf(chair, "b").offAtMs).toBe(33 * minute)
    expect(recordOf(chair, "c").offAtMs).toBeNull()
  })
  it("undoes a wrong tap, one after the other, and keeps it in the log", () => {
    const chair = played([2, on("a")], [4, on("b")], [5, { kind: "undo" }], [6, { kind: "undo" }])
    expect(recordOf(chair, "a").onAtMs).toBeNull()
    expect(chair.log.map(({ undone }) => undone)).toEqual([true, true])
    expect(tapAt(chair, [7, { kind: "undo" }])).toMatchObject({
      refused: true,
      said: [{ code: "nothing-to-undo" }],
    })
  })
})

describe("a missed tap", () => {
  it("counts from the first contact of the foil before, once a later one is on", () => {
    const chair = played([2, on("a")], [7, on("c")])
    expect(recordOf(chair, "b")).toMatchObject({ onAtMs: 2 * minute, isTapped: false })
    expect(recordOf(chair, "d").onAtMs).toBeNull()
  })
  it("is not counted later for a tap that comes out of turn", () => {
    const chair = played([5, on("c")], [6, on("a")])
    expect(recordOf(chair, "b").onAtMs).toBe(0) // passed over at 5, when nothing before it was on
  })
  it("gives way to its own tap, which comes late or out of turn", () => {
    const chair = played([2, on("a")], [7, on("c")])
    const answer = tapAt(chair, [9, on("b")])
    expect(recordOf(answer.chair, "b").onAtMs).toBe(9 * minute)
    expect(answer.said).toEqual([{ code: "counts-from-now", foil: 2, fromMin: 2 }])
    expect(chairSaid(answer.said, en.chair, answer.chair.foils)).toContain(
      "If it went on before, tap “Undo tap”, then “It went on earlier”: it then counts from minute 2.",
    )
  })
  it("is made up for by saying that it went on earlier, and counts from the start where nothing was on before", () => {
    const answer = tapAt(played(), [8, { kind: "missed-on", foil: "a" }])
    expect(recordOf(answer.chair, "a").onAtMs).toBe(0)
    expect(chairSaid(answer.said, en.chair, answer.chair.foils)).toBe(
      "Foil 1 was not tapped on; its time counts from minute 0, the earliest it can have been.",
    )
  })
  it("is told by a look: what is looked at is on", () => {
    const chair = played([2, on("a")], [14, looked("b")])
    expect(recordOf(chair, "b").onAtMs).toBe(2 * minute)
    expect(tapAt(chair, [15, on("b")])).toMatchObject({
      refused: true,
      said: [{ code: "on-since", foil: 2, atMin: 2 }],
    })
  })
})

describe("taps that cannot be", () => {
  const cases: [string, readonly Step[], Step, string][] = [
    [
      "off before on",
      [[2, on("a")]],
      [9, off("b")],
      "Foil 2 was never tapped on, so it cannot come off. Choose it and tap “It went on earlier” first.",
    ],
    [
      "on twice",
      [[2, on("a")]],
      [9, on("a")],
      "Foil 1 has been on since minute 2; its time runs from there.",
    ],
    [
      "off twice",
      [
        [2, on("a")],
        [20, off("a")],
      ],
      [21, off("a")],
      "Foil 1 has been off since minute 20.",
    ],
    [
      "on again after off",
      [
        [2, on("a")],
        [20, off("a")],
      ],
      [21, on("a")],
      "Foil 1 has been off since minute 20.",
    ],
    ["a foil of another plan", [], [1, on("z")], "That foil is not in this service."],
  ]
  for (const [name, before, step, sentence] of cases)
    it(`are refused with a sentence, and leave the record as it was: ${name}`, () => {
      const chair = played(...before)
      const answer = tapAt(chair, step)
      expect(answer.refused).toBe(true)
      expect(chairSaid(answer.said, en.chair, answer.chair.foils)).toBe(sentence)
      expect(answer.chair.log).toEqual(chair.log)
      expect(answer.chair.elapsedMs).toBe(step[0] * minute)
    })
  it("are refused from a window that has not seen the last tap", () => {
    const chair = played([2, on("a")])
    const answer = tapChair(chair, on("b"), { at: at(3), revision: 0 })
    expect(answer.refused).toBe(true)
    expect(answer.said).toEqual([{ code: "changed-in-another-window" }])
  })
})

describe("a limit", () => {
  it("runs from first contact, and neither a look nor a coat nor a late plan moves it", () => {
    const chair = played(
      [2, on("a")],
      [14, looked("a")],
      [15, { kind: "re-coated", foil: "a" }],
      [44, looked("a")],
    )
    expect(dueWithin(chair, 10 * minute)).toEqual([
      { kind: "limit", foil: "a", inMs: 3 * minute }, // 2 + 45 = 47, and it is 44
      { kind: "look", foil: "a", inMs: 5 * minute },
    ])
  })
  it("stays due until the foil is off", () => {
    const { chair } = passTime(played([2, on("a")], [40, looked("a")]), at(90))
    expect(dueWithin(chair, 0)[0]).toEqual({ kind: "limit", foil: "a", inMs: -43 * minute })
    expect(dueWithin(tapAt(chair, [90, off("a")]).chair, 0)).toEqual([])
  })
  it("is announced ahead with the looks, and gives way to a foil that must come off now", () => {
    const chair = played([0, on("a")], [3, on("b")], [12, looked("b", { stretch: "stop" })])
    expect(dueWithin(chair, minute)).toEqual([
      { kind: "take-off", foil: "b", inMs: 0 },
      { kind: "look", foil: "a", inMs: -2 * minute },
    ])
    expect(dueWithin(played([1, on("a")], [5, looked("a", { comfort: "burning" })]), 0)[0].kind).toBe(
      "take-off",
    )
  })
  it("never moves, whatever is tapped", () => {
    const anyTap = fc.oneof(
      fc.record({
        kind: fc.constantFrom("on" as const, "missed-on" as const, "re-coated" as const),
        foil: fc.constantFrom("a", "b", "c", "d"),
      }),
      fc.constantFrom("a", "b", "c", "d").map((foil) => looked(foil)),
      fc.constant<Tap>({ kind: "mixed" }),
    )
    fc.assert(
      fc.property(fc.array(anyTap, { maxLength: 25 }), (taps) => {
        let chair = startChair(foils, at(0))
        const settled = new Map<string, number>()
        const counted = new Map<string, number>()
        for (const [step, tap] of taps.entries()) {
          chair = tapAt(chair, [step + 1, tap]).chair
          for (const { id, onAtMs, isSettled } of foilRecords(chair).values()) {
            if (onAtMs === null) continue
            // Once tapped or handled it stands; a foil only passed over waits for its own tap, and nothing else moves it.
            const [kept, now] = isSettled ? [settled, onAtMs] : [counted, onAtMs]
            expect(now).toBe(kept.get(id) ?? now)
            kept.set(id, now)
          }
        }
      }),
      { numRuns: 60 },
    )
  })
})

describe("the clock", () => {
  it("goes on when the device's is set back two hours in mid-service, and says so", () => {
    const chair = played([2, on("a")])
    const later = { load: "one", monotonicMs: 12 * minute, wallMs: 1e12 + 12 * minute - 120 * minute }
    const answer = tapChair(chair, looked("a"), { at: later, revision: chair.revision })
    expect(answer.chair.elapsedMs).toBe(12 * minute)
    expect(chairSaid(answer.said, en.chair, answer.chair.foils)).toContain("set back by 2 hours")
    expect(answer.chair.clockNotes).toEqual([
      { atMs: 12 * minute, wallMs: later.wallMs, note: answer.said[0] },
    ])
    expect(answer.chair.log.at(-1)).toMatchObject({ atMs: 12 * minute, wallMs: later.wallMs })
  })
  it("survives being stored and a reload without losing a second", () => {
    const stored: Chair = JSON.parse(JSON.stringify(played([2, on("a")])))
    const { chair } = passTime(stored, { load: "two", monotonicMs: 7, wallMs: 1e12 + 30 * minute + 17_000 })
    expect(chair.elapsedMs).toBe(30 * minute + 17_000)
    expect(recordOf(chair, "a").onAtMs).toBe(2 * minute)
  })
})

describe("the rest of the service", () => {
  it("is planned again from what has happened", () => {
    const service = timedService(foilsAlike(4).map((foil, index) => ({ ...foil, id: foils[index].id })))
    const chair = played([1, { kind: "mixed" }], [2, on("a")], [9, on("b")], [20, looked("a")])
    expect(soFarOf(chair)).toEqual({ nowMin: 20, onAtMin: { a: 2, b: 9 }, offAtMin: {}, mixedAtMin: [1] })
    const rest = planService({ ...service, soFar: soFarOf(chair) })
    expect(rest.foils.map(({ onAtMin }) => onAtMin)).toEqual([2, 9, 20, 21.5])
    const { foils: compared } = {
      foils: plannedAndReal(planService(service).foils, tapAt(chair, [30, off("a")]).chair),
    }
    expect(compared[0]).toEqual({
      id: "a",
      plannedOnMin: 0,
      realOnMin: 2,
      plannedMinutesOn: 26,
      realMinutesOn: 28,
    })
    expect(compared[3]).toMatchObject({ realOnMin: null, realMinutesOn: null })
  })
  it("costs a repaint at most 2 ms of script with 120 foils", () => {
    const many = foilsAlike(120).map(({ id, mapNumber, limitMin }) => ({
      id,
      mapNumber,
      limitMin,
      firstLookMin: 10,
    }))
    let chair = startChair(many, at(0))
    for (const [index, { id }] of many.entries()) chair = tapAt(chair, [index / 2, on(id)]).chair
    const times = Array.from({ length: 15 }, (_, second) => {
      const start = performance.now()
      dueWithin(passTime(chair, at(60 + second / 60)).chair, minute)
      return performance.now() - start
    })
    expect(times.sort((a, b) => a - b)[7]).toBeLessThan(2)
  })
})
