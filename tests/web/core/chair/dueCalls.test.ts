import { describe, expect, it } from "vitest"
import { callCode } from "../../../../web/core/chair/callCode"
import type { Tap } from "../../../../web/core/chair/chair"
import { passTime, startChair, tapChair } from "../../../../web/core/chair/chairClock"
import { callsShown, type DueCall, dueCalls, nextCall } from "../../../../web/core/chair/dueCalls"
import { say } from "../../../../web/words/say"
import { en } from "../../../support/words"

const callWords = (call: DueCall) => say(en.chair.calls.shown, callCode(call))
const spokenCall = (call: DueCall) => say(en.chair.calls.spoken, callCode(call))

const minute = 60_000
const at = (minutes: number) => ({ load: "one", monotonicMs: minutes * minute, wallMs: minutes * minute })
const foils = [7, 3].map((mapNumber) => ({ id: `f${mapNumber}`, mapNumber, limitMin: 45, firstLookMin: 10 }))
const ahead = { lookMs: minute, limitMs: 5 * minute }

/** Foil 7 on at minute 2, foil 3 at minute 2.5; looks are due at 12 and 12.5, limits at 47 and 47.5. */
function chairAt(minutes: number, ...taps: readonly (readonly [number, Tap])[]) {
  let chair = startChair(foils, at(0))
  for (const [when, tap] of [
    [2, { kind: "on", foil: "f7" }],
    [2.5, { kind: "on", foil: "f3" }],
    ...taps,
  ] as const)
    chair = tapChair(chair, tap, { at: at(when), revision: chair.revision }).chair
  return passTime(chair, at(minutes)).chair
}
const callsAt = (...when: Parameters<typeof chairAt>) => dueCalls(chairAt(...when), ahead)
const look = (foil: string, when: number, stretch: "ok" | "stop" = "ok") =>
  [when, { kind: "looked", foil, seen: { level: 8, stretch, comfort: "ok", moist: true } }] as const

describe("what is called out at the chair", () => {
  it("is nothing before it is soon", () => expect(callsAt(10.9)).toEqual([]))
  it("is a look a minute ahead, foils of a round together in their order", () => {
    const [call, ...rest] = callsAt(11.75)
    expect(rest).toEqual([])
    expect(call).toMatchObject({ kind: "look", stage: "ahead", foils: [7, 3], inMs: 0.25 * minute })
    expect(callWords(call)).toBe("Foils 7, 3: check in 0:15")
    expect(spokenCall(call)).toBe("Foils 7, 3: check soon.")
  })
  it("is late when nobody has looked", () => {
    expect(callWords(callsAt(12.6)[0])).toBe("Foils 7, 3: check now")
    expect(callWords(callsAt(14)[0])).toBe("Foils 7, 3: check now, 2:00 late")
  })
  it("is the limit five minutes ahead, before any look, and it stays until the foil is off", () => {
    const looks = [look("f7", 43), look("f3", 43)]
    expect(callWords(callsAt(44, ...looks)[0])).toBe("Foil 7: max time in 3:00")
    expect(callWords(callsAt(48, ...looks)[0])).toBe("Foil 7: off now, 1:00 past max time")
    expect(callsAt(48, ...looks, [47.1, { kind: "off", foil: "f7" }])[0].foils).toEqual([3])
  })
  it("shows all foils past their limit in one, the longest over first, and each by itself before", () => {
    const looks = [look("f7", 46.9), look("f3", 46.9)]
    expect(callsShown(callsAt(48.5, ...looks)).map(callWords)).toEqual([
      "Foils 7, 3: off now, up to 1:30 past max time",
    ])
    expect(callsShown(callsAt(47.2, ...looks)).map(callWords)).toEqual([
      "Foil 7: off now, 0:12 past max time",
      "Foil 3: max time in 0:18",
    ])
  })
  it("asks nobody to look at a foil past its limit, only at the others", () => {
    // Neither was looked at: both looks are due since minute 12.
    expect(callsShown(callsAt(47.2)).map(callWords)).toEqual([
      "Foil 7: off now, 0:12 past max time",
      "Foil 3: max time in 0:18",
      "Foil 3: check now, 35:12 late",
    ])
  })
  it("names three and more foils that follow each other as a span", () => {
    const [call] = callsAt(11.75)
    const of = (...foils: number[]) => callWords({ ...call, foils }).split(":")[0]
    expect(of(1, 2, 3, 4, 5)).toBe("Foils 1 to 5")
    expect(of(9, 1, 2, 3, 5, 6, 8)).toBe("Foils 9, 1 to 3, 5, 6, 8")
  })
  it("is to take off when a look said stop, before everything else", () => {
    const [call] = callsAt(46, look("f3", 44, "stop"))
    expect(callWords(call)).toBe("Foil 3: off now, a check said stop")
  })
})

describe("the next call", () => {
  const words = (...when: Parameters<typeof chairAt>) => {
    const call = nextCall(chairAt(...when))
    return call && callWords(call)
  }
  it("is the one that comes first, however far ahead", () =>
    expect(words(4)).toBe("Foils 7, 3: check in 8:00"))
  it("is the most urgent one once it is due", () => {
    expect(words(47.5, look("f7", 46), look("f3", 46))).toBe("Foil 7: off now, 0:30 past max time")
    expect(words(30, look("f7", 29, "stop"))).toBe("Foil 7: off now, a check said stop")
  })
  it("is none while nothing is on", () => expect(nextCall(startChair(foils, at(0)))).toBeNull())
})

describe("a bowl at the chair", () => {
  // Mixed at minute 1 for foils 7 and 3, good for 20 minutes; 7 goes on at minute 2.
  const bowls = [{ mix: "B", foils: ["f7", "f3"], potLifeMin: 20 }]
  function bowlCallsAt(minutes: number, ...taps: readonly (readonly [number, Tap | { kind: "undo" }])[]) {
    let chair = startChair(foils, at(0), undefined, bowls)
    for (const [when, tap] of [[1, { kind: "mixed" }], [2, { kind: "on", foil: "f7" }], ...taps] as const)
      chair = tapChair(chair, tap, { at: at(when), revision: chair.revision }).chair
    return dueCalls(passTime(chair, at(minutes)).chair, ahead).filter(({ kind }) => kind === "bowl")
  }
  it("is called five minutes before its pot life ends, and after it", () => {
    expect(bowlCallsAt(15.9)).toEqual([])
    const [soon] = bowlCallsAt(17)
    expect(callWords(soon)).toBe("Bowl 1 of mix B: use up within 4:00")
    expect(spokenCall(soon)).toBe("Bowl 1 of mix B: use it up soon.")
    const [late] = bowlCallsAt(23)
    expect(late.stage).toBe("late")
    expect(callWords(late)).toBe("Bowl 1 of mix B: 2:00 past its pot life, mix a fresh one")
  })
  it("counts from the earliest it can have been mixed where that tap was missed, until it is mixed afresh", () => {
    // Nobody tapped either bowl: 7 of the first goes on at minute 2, 3 of the second at 6; 9 and 8 are still to come.
    const more = [...foils, ...[9, 8].map((mapNumber) => ({ ...foils[0], id: `f${mapNumber}`, mapNumber }))]
    const two = [
      { mix: "B", foils: ["f7", "f9"], potLifeMin: 30 },
      { mix: "C", foils: ["f3", "f8"], potLifeMin: 20 },
    ]
    let chair = startChair(more, at(0), undefined, two)
    const tap = (when: number, what: Tap) => {
      chair = tapChair(chair, what, { at: at(when), revision: chair.revision }).chair
    }
    const bowlsDue = () =>
      dueCalls(chair, ahead).flatMap(({ kind, bowl, inMs }) =>
        kind === "bowl" ? [[bowl?.mix, inMs / minute]] : [],
      )
    tap(2, { kind: "on", foil: "f7" })
    tap(6, { kind: "on", foil: "f3" })
    chair = passTime(chair, at(26)).chair
    expect(bowlsDue()).toEqual([
      ["C", -4],
      ["B", 4],
    ]) // from minute 2, the first contact of the bowl before; from 0
    tap(26, { kind: "mixed", bowl: 1 })
    expect(bowlsDue()).toEqual([["B", 4]])
  })
  it("is called no more once its last foil is on, or once it is mixed afresh, until that is old too", () => {
    expect(bowlCallsAt(23, [18, { kind: "on", foil: "f3" }])).toEqual([])
    expect(bowlCallsAt(23, [22, { kind: "mixed", bowl: 0 }])).toEqual([])
    expect(bowlCallsAt(43, [22, { kind: "mixed", bowl: 0 }])).toHaveLength(1)
    expect(bowlCallsAt(23, [22, { kind: "mixed", bowl: 0 }], [22.5, { kind: "undo" }])).toHaveLength(1)
  })
})
