import { describe, expect, it } from "vitest"
import { callCode } from "../../../../web/core/chair/callCode"
import type { Chair, Tap } from "../../../../web/core/chair/chair"
import { startChair, tapChair } from "../../../../web/core/chair/chairClock"
import { dueWithin, soFarOf } from "../../../../web/core/chair/chairDue"
import { notReadyOf, recordsOf, rootsToCome } from "../../../../web/core/chair/chairRecord"
import { dueCalls } from "../../../../web/core/chair/dueCalls"
import { mixingOrder, nextBowl } from "../../../../web/core/chair/nextBowl"
import { say } from "../../../../web/words/say"
import { en } from "../../../support/words"

const minute = 60_000
const at = (minutes: number) => ({ load: "one", monotonicMs: minutes * minute, wallMs: minutes * minute })
/** Ends off by 45 and planned off at 35; roots 15 minutes later, off 25 minutes after they went on at the latest. */
const rooted = {
  id: "c",
  mapNumber: 3,
  kind: "slice" as const,
  mix: "A",
  roots: { mix: "B", toMm: 30, first: "ends" as const, afterMin: 15 },
  rootsLater: { limitMin: 25, plannedAfterMin: 15 },
  limitMin: 45,
  firstLookMin: 10,
  plannedOnMin: 0,
  plannedMinutesOn: 35,
}
const plain = { id: "d", mapNumber: 4, mix: "A", limitMin: 45, firstLookMin: 10 }
const bowls = [
  { mix: "A", foils: ["c"], potLifeMin: 45 },
  { mix: "B", foils: ["c"], potLifeMin: 45 },
  { mix: "A", foils: ["d"], potLifeMin: 45 },
]

type Step = readonly [minutes: number, tap: Tap | { kind: "undo" }]
const tapAt = (chair: Chair, [minutes, tap]: Step) =>
  tapChair(chair, tap, { at: at(minutes), revision: chair.revision })
const played = (...steps: readonly Step[]) =>
  steps.reduce(
    (chair, step) => tapAt(chair, step).chair,
    startChair([rooted, plain], at(0), undefined, bowls),
  )
const on: Tap = { kind: "on", foil: "c" }
const rootsOn: Tap = { kind: "roots-on", foil: "c" }
const off: Tap = { kind: "off", foil: "c" }
const recordOf = (chair: Chair) => {
  const record = recordsOf(chair).get("c")
  if (!record) throw new Error("no record")
  return record
}
const dueOf = (chair: Chair) =>
  dueWithin(chair, 600 * minute)
    .filter(({ foil }) => foil === "c")
    .map(({ kind, inMs }) => [kind, inMs / minute + chair.elapsedMs / minute])

describe("roots that go on later, at the chair", () => {
  it("are due fifteen minutes after the ends really went on; nothing else of them is counted until they are tapped", () => {
    const chair = played([4, on])
    expect(dueOf(chair)).toEqual([
      ["limit", 49],
      ["roots", 19],
      ["look", 14],
    ])
    expect(recordOf(chair)).toMatchObject({ plannedMs: null, limitMs: 45 * minute })
    expect(soFarOf(chair).rootsOnAtMin).toEqual({})
    expect(dueOf(played([4, on], [60, { kind: "mixed" }]))).toContainEqual(["roots", 19])
  })

  it("are called out with their mix, ahead and when they are late", () => {
    const saidAt = (minutes: number) =>
      dueCalls(played([4, on], [minutes, { kind: "mixed", bowl: 2 }]), { lookMs: 2 * minute, limitMs: 0 })
        .filter(({ kind }) => kind === "roots")
        .map((call) => [
          say(en.chair.calls.shown, callCode(call)),
          say(en.chair.calls.spoken, callCode(call)),
        ])
    expect(saidAt(16)).toEqual([])
    expect(saidAt(18)).toEqual([["Foil 3: roots in 1:00, mix B", "Foil 3: roots soon, mix B."]])
    expect(saidAt(19)).toEqual([["Foil 3: roots on, mix B", "Foil 3: roots on, mix B."]])
    expect(saidAt(21)).toEqual([["Foil 3: roots on, mix B, 2:00 late", "Foil 3: roots on, mix B."]])
  })

  it("count from their own tap, by whoever tapped: off 25 minutes after, planned 20 after", () => {
    const chair = played([4, on], [21, { ...rootsOn, by: 2 }])
    expect(recordOf(chair).rootsLater).toEqual({
      mix: "B",
      afterMs: 15 * minute,
      onAtMs: 21 * minute,
      by: 2,
    })
    expect(dueOf(chair)).toEqual([
      ["limit", 46],
      ["planned-off", 41],
      ["look", 14],
    ])
    expect(soFarOf(chair).rootsOnAtMin).toEqual({ c: 21 })
    expect(rootsToCome(chair)).toEqual([])
  })

  it("never buy the ends more time than theirs", () => {
    expect(dueOf(played([4, on], [30, rootsOn]))[0]).toEqual(["limit", 49])
  })

  it("count from the earliest they can have been where the tap comes afterwards", () => {
    const chair = played([4, on], [30, { kind: "missed-roots-on", foil: "c" }])
    expect(recordOf(chair).rootsLater?.onAtMs).toBe(4 * minute)
    expect(dueOf(chair)[0]).toEqual(["limit", 29])
  })

  it("are as if never tapped after an undo", () => {
    const chair = played([4, on], [21, rootsOn], [22, { kind: "undo" }])
    expect(recordOf(chair).rootsLater?.onAtMs).toBeNull()
    expect(dueOf(chair)).toContainEqual(["roots", 19])
  })

  it("are asked for before a rinse, and their absence stays with what was rinsed without them", () => {
    const early = played([4, on], [40, { kind: "mixed", bowl: 2 }])
    expect(notReadyOf(early)).toEqual([3])
    const rinsed = tapAt(early, [41, { kind: "rinsed" }]).chair
    expect(recordOf(rinsed)).toMatchObject({ offAtMs: 41 * minute, rootsLater: { onAtMs: null } })
    expect(dueOf(rinsed)).toEqual([])
  })

  it("are no longer asked for where a check said stop", () => {
    const seen = { level: null, stretch: "stop" as const, comfort: null, moist: null }
    expect(dueOf(played([4, on], [18, { kind: "looked", foil: "c", seen }])).map(([kind]) => kind)).toEqual([
      "take-off",
      "limit",
    ])
  })

  it("are refused twice, before the ends, after the foil is off, and of a foil that has none", () => {
    const refusal = (step: Step, ...before: readonly Step[]) => {
      const { refused, said } = tapAt(played(...before), step)
      return refused ? said[0] : null
    }
    expect(refusal([22, rootsOn], [4, on], [21, rootsOn])).toEqual({
      code: "roots-on-since",
      foil: 3,
      atMin: 21,
    })
    expect(refusal([3, rootsOn])).toEqual({ code: "never-on", foil: 3 })
    expect(refusal([30, rootsOn], [4, on], [20, off])).toMatchObject({ code: "off-since" })
    expect(refusal([9, { kind: "roots-on", foil: "d" }], [4, on], [8, { kind: "on", foil: "d" }])).toEqual({
      code: "no-later-roots",
      foil: 4,
    })
  })
})

describe("the bowl of roots that go on later", () => {
  const planned = mixingOrder([
    { mix: "A", atMin: 3 },
    { mix: "B", atMin: 19 },
    { mix: "A", atMin: 9 },
  ])
  const mixed = (bowl: number): Tap => ({ kind: "mixed", bowl })

  it("is mixed in its turn by time, not by its place", () => {
    const first = played([3, mixed(0)])
    expect(nextBowl(played(), planned)).toBe(0)
    expect(nextBowl(first, planned)).toBe(2)
    const both = played([3, mixed(0)], [4, on], [9, mixed(2)], [10, { kind: "on", foil: "d" }])
    expect(nextBowl(both, planned)).toBe(1)
    expect(nextBowl(tapAt(both, [19, mixed(1)]).chair, planned)).toBeNull()
  })

  it("runs out from its own mixing, for as long as the roots are not on", () => {
    const bowlDue = (chair: Chair) =>
      dueWithin(chair, 600 * minute).flatMap((due) =>
        due.kind === "bowl" ? [[due.bowl, (due.inMs + chair.elapsedMs) / minute]] : [],
      )
    const chair = played([3, mixed(0)], [4, on], [19, mixed(1)])
    expect(bowlDue(chair)).toEqual([[1, 64]])
    expect(bowlDue(tapAt(chair, [20, rootsOn]).chair)).toEqual([])
    // One that nobody mixed runs from nowhere.
    expect(bowlDue(played([3, mixed(0)], [4, on]))).toEqual([])
  })

  it("is not asked for where the foil came off without its roots", () => {
    const chair = played([3, mixed(0)], [4, on], [9, mixed(2)], [10, { kind: "on", foil: "d" }], [30, off])
    expect(nextBowl(chair, planned)).toBeNull()
  })
})
