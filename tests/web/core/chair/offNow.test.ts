import { describe, expect, it } from "vitest"
import type { Chair, Tap } from "../../../../web/core/chair/chair"
import { passTime, startChair, tapChair } from "../../../../web/core/chair/chairClock"
import { notReadyOf, standingOf } from "../../../../web/core/chair/chairRecord"
import { callsShown, dueCalls, isDanger } from "../../../../web/core/chair/dueCalls"
import { tonersOnNow, tonerTimes } from "../../../../web/core/chair/tonerTimes"
import type { LookSeen } from "../../../../web/core/document/serviceRecord"
import { en } from "../../../support/words"

const minute = 60_000
const at = (minutes: number) => ({ load: "one", monotonicMs: minutes * minute, wallMs: minutes * minute })
const ahead = { lookMs: minute, limitMs: 5 * minute }
const foils = [1, 2, 3].map((mapNumber) => ({
  id: `f${mapNumber}`,
  mapNumber,
  limitMin: 45,
  firstLookMin: 10,
  plannedMinutesOn: 26,
  goalLevel: 9,
}))
type Step = readonly [minutes: number, tap: Tap]
const play = (start: Chair, ...steps: readonly Step[]) =>
  steps.reduce(
    (chair, [when, tap]) => tapChair(chair, tap, { at: at(when), revision: chair.revision }).chair,
    start,
  )
const played = (...steps: readonly Step[]) => play(startChair(foils, at(0)), ...steps)
const on = (foil: string): Tap => ({ kind: "on", foil })
const seen = (change: Partial<LookSeen>): LookSeen => ({
  level: null,
  stretch: null,
  comfort: null,
  moist: null,
  ...change,
})
const looked = (foil: string, change: Partial<LookSeen>): Tap => ({
  kind: "looked",
  foil,
  seen: seen(change),
})
const shownAt = (minutes: number, chair: Chair) =>
  callsShown(dueCalls(passTime(chair, at(minutes)).chair, ahead)).map(({ kind, foils: named }) => [
    kind,
    ...named,
  ])

describe("a foil that is to come off", () => {
  it("counts how late the planned ones are without those called at their maximum time", () => {
    const chair = played([0, on("f1")], [19.5, on("f2")], [20, on("f3")])
    const [limit, planned] = callsShown(dueCalls(passTime(chair, at(46.5)).chair, ahead))
    expect(limit).toMatchObject({ kind: "limit", foils: [1] })
    expect(planned).toMatchObject({ kind: "planned-off", foils: [2, 3], inMs: -minute })
  })
  it("is called at once when a check is at the goal or past it, and not before", () => {
    expect(shownAt(13, played([0, on("f1")], [12, looked("f1", { level: 8.5 })]))).toEqual([])
    for (const level of [9, 9.5])
      expect(shownAt(13, played([0, on("f1")], [12, looked("f1", { level })]))).toEqual([["at-goal", 1]])
  })
  it("is called at its planned time, and again only an interval after a check past it", () => {
    const chair = played(
      [0, on("f1")],
      [12, looked("f1", {})],
      [17, looked("f1", {})],
      [22, looked("f1", {})],
    )
    expect(shownAt(24.5, chair)).toEqual([])
    expect(shownAt(26.1, chair)).toEqual([["planned-off", 1]])
    const carried = play(chair, [27, { kind: "carried-on", foils: ["f1"] }])
    expect(shownAt(28, carried)).toEqual([])
    expect(shownAt(32.1, carried)).toEqual([["planned-off", 1]])
  })
  it("stays called for burning though a later check says nothing, and only that is danger", () => {
    const burning = played(
      [0, on("f1")],
      [5, looked("f1", { comfort: "burning" })],
      [6, { kind: "carried-on", foils: ["f1"] }],
    )
    const [call] = dueCalls(burning, ahead)
    expect([call.kind, isDanger(call)]).toEqual(["take-off", true])
    expect(isDanger({ kind: "at-goal", stage: "now" })).toBe(false)
    expect(isDanger({ kind: "look", stage: "late" })).toBe(false)
    expect(isDanger({ kind: "limit", stage: "now" })).toBe(true)
  })
})

describe("a group of foils", () => {
  it("is checked by one tap, and each has its own check in the record", () => {
    const chair = played(
      [0, on("f1")],
      [1, on("f2")],
      [2, on("f3")],
      [12, { kind: "carried-on", foils: ["f1", "f2", "f3"] }],
    )
    const { records } = standingOf(chair)
    for (const { looks } of records.values()) expect(looks).toEqual([{ atMs: 12 * minute, seen: seen({}) }])
    expect(shownAt(13, chair)).toEqual([])
  })
  it("is still due a check that was put off, which the record keeps", () => {
    const chair = played([0, on("f1")], [11, { kind: "not-checked", foils: ["f1"] }])
    expect(standingOf(chair).records.get("f1")).toMatchObject({ notChecked: 1, looks: [] })
    expect(shownAt(12, chair)).toEqual([["look", 1]])
  })
  it("is asked about before a rinse while some have not had their planned time", () => {
    const chair = passTime(played([0, on("f1")], [20, on("f2")]), at(26)).chair
    expect(notReadyOf(chair)).toEqual([2])
    expect(notReadyOf(play(chair, [26, looked("f2", { level: 9 })]))).toEqual([])
  })
})

describe("the order of placing", () => {
  it("may be any: a foil chosen out of its turn says nothing of those before it", () => {
    const chair = played([0, { kind: "on", foil: "f3", outOfTurn: true }])
    expect(standingOf(chair).onNow.map(({ id }) => id)).toEqual(["f3"])
    expect(standingOf(chair).queues[1].map(({ id }) => id)).toEqual(["f1", "f2"])
  })
  it("has a queue for each of two, and one lane does not wait for the other", () => {
    const lanes = foils.map((foil, i) => ({ ...foil, lane: i === 1 ? (2 as const) : (1 as const) }))
    const chair = play(startChair(lanes, at(0)), [0, on("f1")], [1, on("f3")])
    expect(standingOf(chair).queues[1]).toEqual([])
    expect(standingOf(chair).queues[2].map(({ id }) => id)).toEqual(["f2"])
    expect(standingOf(chair).records.get("f2")?.onAtMs).toBeNull()
  })
})

describe("after the rinse", () => {
  const toner = { product: "House toner (invented)", developerVolume: 10, productG: 20, developerG: 40 }
  const toners = [
    { ...toner, zone: "mids" as const, plannedMin: 10, limitMin: 20 },
    { ...toner, zone: "hairline" as const, plannedMin: 5, limitMin: null },
  ]
  const rinsed = play(
    { ...startChair(foils, at(0)), toners },
    [0, on("f1")],
    [26, { kind: "off", foil: "f1" }],
  )
  it("each toner has its own clock, is called at its minutes, and in red at its own maximum time", () => {
    const chair = play(
      rinsed,
      [40, { kind: "toner-on", zone: "mids" }],
      [43, { kind: "toner-on", zone: "hairline" }],
    )
    const zonesAt = (minutes: number) =>
      dueCalls(passTime(chair, at(minutes)).chair, ahead).map((call) => [
        call.kind,
        call.zone,
        isDanger(call),
      ])
    expect(zonesAt(44)).toEqual([])
    expect(zonesAt(48.5)).toEqual([["toner-off", "hairline", false]])
    expect(zonesAt(60.1)[0]).toEqual(["toner-limit", "mids", true])
    const off = play(chair, [50, { kind: "toner-off", zone: "mids" }])
    expect(tonerTimes(off)[0]).toMatchObject({ onAtMs: 40 * minute, offAtMs: 50 * minute })
  })
  it("holds the end of the service for as long as a toner is on", () => {
    expect(tonersOnNow(rinsed)).toEqual([])
    const chair = play(
      rinsed,
      [40, { kind: "toner-on", zone: "mids" }],
      [43, { kind: "toner-on", zone: "hairline" }],
      [50, { kind: "toner-off", zone: "mids" }],
    )
    expect(tonersOnNow(chair)).toEqual(["hairline"])
    expect(en.chair.tonerStillOn(tonersOnNow(chair))).toBe(
      "Toner, hairline still on. Tap “Rinsed off” first.",
    )
  })
  it("refuses a toner off that is not on, and on twice", () => {
    const said = (chair: Chair, tap: Tap) =>
      tapChair(chair, tap, { at: at(60), revision: chair.revision }).said[0]?.code
    expect(said(rinsed, { kind: "toner-off", zone: "mids" })).toBe("toner-never-on")
    const chair = play(rinsed, [40, { kind: "toner-on", zone: "mids" }])
    expect(said(chair, { kind: "toner-on", zone: "mids" })).toBe("toner-on-since")
  })
})
