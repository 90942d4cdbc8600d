import { describe, expect, it } from "vitest"
import type { Chair, LogEntry, Tap } from "../../../../web/core/chair/chair"
import { startChair, tapChair } from "../../../../web/core/chair/chairClock"
import { timeBetween } from "../../../../web/core/chair/chairTime"
import { isDanger, isOff } from "../../../../web/core/chair/dueCalls"
import { handAfter, tapInHand, worksInTwo } from "../../../../web/core/chair/inHand"
import { timedFoils, usualPace } from "../../../../web/core/chair/schedulePace"
import { stageOf, tonersOnNow, tonerTimes } from "../../../../web/core/chair/tonerTimes"

const tapped = (tap: Tap, atMin: number, undone = false): LogEntry => ({
  tap,
  atMs: atMin * 60_000,
  wallMs: atMin * 60_000,
  onAtMs: null,
  undone,
  note: null,
})
const on = (foil: string, atMin: number, undone = false) => tapped({ kind: "on", foil }, atMin, undone)

describe("the toners of a service", () => {
  const toners = [{ zone: "mids" }, { zone: "hairline" }] as unknown as NonNullable<
    Parameters<typeof tonerTimes>[0]["toners"]
  >
  const mids = { zone: "mids" } as const
  const onAt = (atMin: number, undone = false) => tapped({ kind: "toner-on", ...mids }, atMin, undone)
  const offAt = (atMin: number) => tapped({ kind: "toner-off", ...mids }, atMin)

  it("are on from a tap that stands, not from one taken back", () => {
    expect(tonerTimes({ toners, log: [onAt(3, true), onAt(5)] })[0]).toMatchObject({
      onAtMs: 300_000,
      offAtMs: null,
    })
    expect(tonerTimes({ log: [onAt(3)] })).toEqual([])
    expect(tonersOnNow({ toners, log: [onAt(3)] })).toEqual(["mids"])
    expect(tonersOnNow({ toners, log: [onAt(3), offAt(9)] })).toEqual([])
  })
  it("follow the foils, and the service is over once the last of them is off", () => {
    expect(stageOf({ toners, log: [] }, false)).toBe("foils")
    expect(stageOf({ toners, log: [onAt(3), offAt(9)] }, true)).toBe("toners")
    expect(stageOf({ toners: toners.slice(0, 1), log: [onAt(3), offAt(9)] }, true)).toBe("finished")
    expect(stageOf({ toners: [], log: [] }, true)).toBe("finished")
  })
})

describe("whose tap it is", () => {
  const foil = { id: "a", mapNumber: 1, limitMin: 45, firstLookMin: 10 }
  const foils = [foil, { ...foil, id: "b", lane: 2 as const }]
  const put: Tap = { kind: "on", foil: "a" }
  const alarm: Tap = { kind: "alarm", what: "eye" }

  it("is nobody's of one alone, and of two that of whoever has the device", () => {
    expect([worksInTwo({ foils }), worksInTwo({ foils: [foil] })]).toEqual([true, false])
    expect(tapInHand({ foils, hand: 2 }, put)).toEqual({ ...put, by: 2 })
    expect(tapInHand({ foils: [foil], hand: 2 }, put)).toBe(put)
    expect(tapInHand({ foils }, put)).toBe(put)
    expect(tapInHand({ foils, hand: 2 }, { ...put, by: 1 })).toEqual({ ...put, by: 1 })
  })
  it("is nobody's where something is wrong, and leaves the device where it is", () => {
    expect(tapInHand({ foils, hand: 2 }, alarm)).toBe(alarm)
    expect(handAfter({ hand: 2 }, alarm)).toBe(2)
    expect(handAfter({ hand: 2 }, { ...put, by: 1 })).toBe(1)
    expect(handAfter({ hand: 2 }, put)).toBe(2)
  })
})

describe("minutes of a foil", () => {
  it("run from one foil to the next, over a check, and not over what else came between", () => {
    const look: Tap = { kind: "looked", foil: "a", said: "leave" } as unknown as Tap
    expect(timedFoils({ log: [on("a", 0), tapped(look, 1), on("b", 3)] })).toEqual([
      { foil: "a", minutes: 3, by: 1 },
    ])
    expect(timedFoils({ log: [on("a", 0), tapped({ kind: "off", foil: "a" }, 1), on("b", 3)] })).toEqual([])
    expect(timedFoils({ log: [on("a", 0), on("x", 1, true), on("b", 3)] })).toEqual([
      { foil: "a", minutes: 3, by: 1 },
    ])
  })
  it("start from what other salons told for the usual skill alone, kind by kind", () => {
    const told = { low: 2, mid: 3, high: 4 }
    const start = { paceMin: { slice: told } } as unknown as NonNullable<Parameters<typeof usualPace>[2]>
    expect(usualPace("usual", "slice", start)).toBe(told)
    expect(usualPace("usual", "weave", start)).toEqual(usualPace("usual", "weave"))
    expect(usualPace("expert", "slice", start)).toEqual(usualPace("expert", "slice"))
    const none = { paceMin: null } as unknown as typeof start
    expect(usualPace("usual", "slice", none)).toEqual(usualPace("usual", "slice"))
  })
})

describe("two clocks that nearly agree", () => {
  const at = (monotonicMs: number, wallMs: number) => ({ load: "first", monotonicMs, wallMs })
  it("count the longer, and say nothing within two seconds", () => {
    expect(timeBetween(at(0, 0), at(60_000, 61_000))).toEqual({ ms: 61_000, note: null })
    expect(timeBetween(at(0, 0), at(60_000, 59_000))).toEqual({ ms: 60_000, note: null })
    expect(timeBetween(at(0, 0), at(60_000, 62_000))).toEqual({ ms: 62_000, note: null })
    expect(timeBetween(at(0, 0), at(60_000, 58_000))).toEqual({ ms: 60_000, note: null })
    expect(timeBetween(at(0, 0), at(60_000, 57_999)).note).toEqual({ code: "clock-set-back", byMs: 2001 })
  })
})

describe("a tap that is not taken", () => {
  const moment = (min: number) => ({ load: "first", monotonicMs: min * 60_000, wallMs: min * 60_000 })
  const foil = { id: "a", mapNumber: 7, limitMin: 45, firstLookMin: 10 }
  const begun = (heatMin?: number) => startChair([foil], moment(0), heatMin)
  const tap = (chair: Chair, given: Tap, min: number) =>
    tapChair(chair, given, { at: moment(min), revision: chair.revision })
  const heatOn: Tap = { kind: "heat-on" }
  const heatOff: Tap = { kind: "heat-off" }

  it("is of heat that is not planned, was never on, or is used already", () => {
    expect(tap(begun(), heatOn, 1).said).toEqual([{ code: "no-heat-planned" }])
    expect(tap(begun(10), heatOff, 1).said).toEqual([{ code: "heat-never-on" }])
    const warm = tap(begun(10), heatOn, 2)
    expect([warm.refused, warm.said, warm.chair.revision]).toEqual([false, [], 1])
    expect(tap(warm.chair, heatOn, 3).said).toEqual([{ code: "heat-once", state: "on", atMin: 2 }])
    const cool = tap(warm.chair, heatOff, 8)
    expect(cool.refused).toBe(false)
    expect(tap(cool.chair, heatOn, 9).said).toEqual([{ code: "heat-once", state: "off", atMin: 8 }])
    expect(tap(cool.chair, heatOff, 9).said).toEqual([{ code: "heat-never-on" }])
  })
  it("is of a toner that is not planned, or is rinsed off", () => {
    const toners = [{ zone: "mids" }] as unknown as NonNullable<Chair["toners"]>
    const zone = "mids" as const
    expect(tap(begun(), { kind: "toner-on", zone }, 1).said).toEqual([{ code: "toner-over", zone }])
    const put = tap({ ...begun(), toners }, { kind: "toner-on", zone }, 1)
    const rinsed = tap(put.chair, { kind: "toner-off", zone }, 6)
    expect(rinsed.refused).toBe(false)
    expect(tap(rinsed.chair, { kind: "toner-off", zone }, 7).said).toEqual([{ code: "toner-over", zone }])
  })
  it("is one that says earlier of a foil that is on, or of one that is not there", () => {
    const put = tap(begun(), { kind: "on", foil: "a" }, 2)
    expect(tap(put.chair, { kind: "missed-on", foil: "a" }, 3).said).toMatchObject([
      { code: "on-since", foil: 7 },
    ])
    expect(tap(begun(), { kind: "on", foil: "z" }, 3)).toMatchObject({
      refused: true,
      said: [{ code: "no-such-foil" }],
    })
  })
})

describe("a call", () => {
  const kinds = ["take-off", "at-goal", "planned-off", "limit", "look", "heat-off", "toner-limit"] as const
  const those = (is: typeof isOff, stage: "ahead" | "now") => kinds.filter((kind) => is({ kind, stage }))
  it("is to take off once its time is there", () => {
    expect(those(isOff, "now")).toEqual(["take-off", "at-goal", "planned-off", "limit"])
    expect(those(isOff, "ahead")).toEqual([])
  })
  it("is in red where it can hurt, what a check said at any time", () => {
    expect(those(isDanger, "now")).toEqual(["take-off", "limit", "heat-off", "toner-limit"])
    expect(those(isDanger, "ahead")).toEqual(["take-off"])
  })
})
