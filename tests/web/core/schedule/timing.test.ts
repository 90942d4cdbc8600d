import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { type HeatRefusal, heatRefusal } from "../../../../web/core/schedule/heatRefusal"
import type { Service, TimedFoil } from "../../../../web/core/schedule/scheduleInput"
import { serviceProblems } from "../../../../web/core/schedule/scheduleProblems"
import type { Schedule } from "../../../../web/core/schedule/timing"
import { planService } from "../../../../web/core/schedule/timing"
import { say } from "../../../../web/words/say"
import { processorMs } from "../../../support/processorMs"
import { always, foilsAlike, person, timedFoil, timedMix, timedService } from "../../../support/timedService"
import { en } from "../../../support/words"

const onAt = ({ foils }: Schedule) => foils.map(({ onAtMin }) => onAtMin)
const offAt = ({ foils }: Schedule) => foils.map(({ offAtMin }) => offAtMin)

describe("one pair of hands", () => {
  it("places foil after foil and takes each off when it is expected to be ready", () => {
    const schedule = planService(timedService(foilsAlike(4)))
    expect(onAt(schedule)).toEqual([0, 1.5, 3, 4.5])
    expect(offAt(schedule)).toEqual([26, 27.5, 29, 30.5]) // 26 minutes each
    expect(schedule.foils[1]).toMatchObject({
      readyAtMin: { low: 19.5, mid: 27.5, high: 35.5 },
      limitAtMin: 46.5,
      onMin: 26,
    })
    expect(schedule).toMatchObject({ firstOnMin: 0, lastOnMin: 4.5, rinseMin: 30.5 })
  })
  it("prepares, mixes, parts each working section, and mixes again when the bowl is empty", () => {
    const foils = [..."abc"].map((id) =>
      timedFoil(id, { group: id === "c" ? "two" : "one", productG: always(4) }),
    )
    const schedule = planService(
      timedService(foils, {
        preparingMin: always(5),
        partingMin: always(1),
        mixes: [timedMix("A", { mixingMin: always(2), bowlG: 9 })],
      }),
    )
    // 5 preparing; mix to 7; part to 8; a 8-9.5, b 9.5-11; a third 4 g do not fit 9 g: mix to 13, part to 14; c 14.
    expect(onAt(schedule)).toEqual([8, 9.5, 14])
    expect(schedule.bowls).toEqual([
      { mix: "A", foils: ["a", "b"], atMin: 5, mixedAtMin: 7, lastUseMin: 11, useByMin: 67 },
      { mix: "A", foils: ["c"], atMin: 11, mixedAtMin: 13, lastUseMin: 15.5, useByMin: 73 },
    ])
  })
  it("takes a ready foil off before placing the next, and hands are not in two places", () => {
    // Ready after 4, a minute to wipe: a on 0-3, off 3-4; b on 4-7, off 7-8; c on 8-11, off 11-12.
    const foils = [..."abc"].map((id) => timedFoil(id, { placeMin: always(3), readyMin: { A: always(4) } }))
    const schedule = planService(timedService(foils, { wipingMin: always(1) }))
    expect(onAt(schedule)).toEqual([0, 4, 8])
    expect(offAt(schedule)).toEqual([4, 8, 12])
  })
  it("waits for a foil that would pass its limit while the next is placed", () => {
    // a is ready at 10, which is its limit; b would take from 9 to 14. So a comes off at 10, then b goes on.
    const a = timedFoil("a", { placeMin: always(9), limitMin: 10, readyMin: { A: always(10) } })
    const b = timedFoil("b", { placeMin: always(5), limitMin: 10, readyMin: { A: always(10) } })
    const schedule = planService(timedService([a, b]))
    expect(onAt(schedule)).toEqual([0, 10])
    expect(offAt(schedule)).toEqual([10, 20])
  })
  it("sees a shorter limit behind a foil that is ready sooner", () => {
    // b may be on for 12: from 1 to 13. c would take from 2 to 14, so b comes off at 13 and a, ready at 12, before it.
    const [a, b, c] = ["a", "b", "c"].map((id) => timedFoil(id, { placeMin: always(id === "c" ? 12 : 1) }))
    const short = { ...b, limitMin: 12, readyMin: { A: always(12) } }
    const schedule = planService(timedService([{ ...a, readyMin: { A: always(12) } }, short, c]))
    expect(offAt(schedule).slice(0, 2)).toEqual([12, 13])
    expect(onAt(schedule)[2]).toBe(13)
  })
  it("takes a foil off at its limit when it is not ready by then", () => {
    const never = Number.POSITIVE_INFINITY
    const slow = timedFoil("a", { readyMin: { A: { low: 40, mid: never, high: never } } })
    expect(offAt(planService(timedService([slow])))).toEqual([45])
  })
  it("never works in a break, and cuts no foil in two", () => {
    const hands = [person({ breaks: [{ fromMin: 4, toMin: 14 }] })]
    expect(onAt(planService(timedService(foilsAlike(4), { hands })))).toEqual([0, 1.5, 14, 15.5])
  })
  it("takes its own pace", () =>
    expect(onAt(planService(timedService(foilsAlike(3), { hands: [person({ paceShare: 2 })] })))).toEqual([
      0, 3, 6,
    ]))
})

describe("two pairs of hands", () => {
  it("mix and part at the same time, then place side by side", () => {
    const schedule = planService(
      timedService(foilsAlike(4), {
        hands: [person(), person()],
        partingMin: always(3),
        mixes: [timedMix("A", { mixingMin: always(2) })],
      }),
    )
    expect(onAt(schedule)).toEqual([3, 3, 4.5, 4.5])
    expect(schedule.foils.map(({ person }) => person)).toEqual([1, 0, 0, 1])
  })
  it("have the last foil on as soon as any way of sharing out the foils in their order", () =>
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 2, max: 17 }), { minLength: 1, maxLength: 9 }), (quarters) => {
        const minutes = quarters.map((quarter) => quarter / 4)
        const foils = minutes.map((placeMin, at) => timedFoil(`f${at}`, { placeMin: always(placeMin) }))
        const { foils: times } = planService(timedService(foils, { hands: [person(), person()] }))
        expect(Math.max(...times.map(({ placedAtMin }) => placedAtMin))).toBeCloseTo(soonestOfAll(minutes), 9)
      }),
      { numRuns: 60 },
    ))
})

/** Brute force: every foil given to either pair of hands, none begun before the one ahead of it; the soonest end. */
function soonestOfAll(minutes: readonly number[]): number {
  const ends = Array.from({ length: 2 ** minutes.length }, (_, who) => {
    const freeAt = [0, 0]
    let begun = 0
    for (const [at, placeMin] of minutes.entries()) {
      const hand = (who >> at) & 1
      begun = Math.max(begun, freeAt[hand])
      freeAt[hand] = begun + placeMin
    }
    return Math.max(...freeAt)
  })
  return Math.min(...ends)
}

describe("one common rinse", () => {
  it("comes when all are ready", () =>
    expect(planService(timedService(foilsAlike(4), { rinse: "together" })).rinseMin).toBe(30.5))
  it("comes when the first reaches its limit, if that is sooner", () => {
    const schedule = planService(timedService(foilsAlike(25), { rinse: "together" }))
    expect(schedule.rinseMin).toBe(45)
    expect(schedule.foils[24].onMin).toBe(9) // on at 24 x 1.5 = 36
  })
})

describe("looks", () => {
  it("begin at 10 minutes, go on every 5, and end when the last foil is off", () => {
    const schedule = planService(timedService(foilsAlike(3)))
    expect(schedule.looksAtMin).toEqual([10, 15, 20, 25])
    expect(schedule.foils[2].looksAtMin).toEqual([10, 15, 20, 25]) // on at 3: seen at 7 minutes, at the latest at 10
  })
  it("begin at 5 minutes on fine, porous or lightened hair", () => {
    const schedule = planService(timedService([timedFoil("a"), timedFoil("b", { delicate: true })]))
    expect(schedule.looksAtMin[0]).toBe(6.5) // b is on at 1.5
    expect(schedule.foils[0].looksAtMin[0]).toBe(6.5)
  })
  it("begin as the sheet says, but never later than at 5 minutes on delicate hair", () => {
    const first = (change: Partial<TimedFoil>) =>
      planService(timedService([timedFoil("a", { firstLookMin: 15, ...change })])).looksAtMin[0]
    expect(first({})).toBe(15)
    expect(first({ delicate: true })).toBe(5)
    expect(first({ delicate: true, firstLookMin: 3 })).toBe(3)
    expect(first({ firstLookMin: null })).toBe(10)
  })
  it("never leave a foil longer than its first look and then the interval", () =>
    fc.assert(
      fc.property(fc.array(fc.boolean(), { minLength: 1, maxLength: 40 }), (delicate) => {
        const foils = delicate.map((isDelicate, at) => timedFoil(`f${at}`, { delicate: isDelicate }))
        for (const [at, { onAtMin, offAtMin, looksAtMin }] of planService(
          timedService(foils),
        ).foils.entries()) {
          const seen = [...looksAtMin, offAtMin]
          expect(seen[0] - onAtMin).toBeLessThanOrEqual((delicate[at] ? 5 : 10) + 1e-9)
          for (const [next, minute] of seen.slice(1).entries())
            expect(minute - seen[next]).toBeLessThanOrEqual(5 + 1e-9)
        }
      }),
      { numRuns: 30 },
    ))
})

describe("heat", () => {
  const warm = [timedMix("A", { heatMostMin: 10 })]
  const heated = (change: Partial<Service>) =>
    timedService(foilsAlike(3), { mixes: warm, heat: { minutes: 8, warmthC: null }, ...change })
  it("comes when all are on, then off, look, cool", () =>
    // The last foil is on at 4.5; 8 minutes; 3 to cool.
    expect(planService(heated({})).heat).toEqual({
      onAtMin: 4.5,
      offAtMin: 12.5,
      lookAtMin: 12.5,
      coolUntilMin: 15.5,
    }))
  const refusals: [string, Partial<Service>, HeatRefusal["code"]][] = [
    ["the sheet does not allow it", { mixes: [timedMix("A")] }, "not-on-sheet"],
    ["it would be longer than the sheet's minutes", { heat: { minutes: 11, warmthC: null } }, "too-long"],
    ["30 volume is used", { mixes: [timedMix("A", { heatMostMin: 10, developerVolume: 30 })] }, "strong-mix"],
    ["there are foils at the hairline", { foils: foilsAlike(1, { atHairline: true }) }, "at-hairline"],
    ["a cushion lies near the root", { foils: foilsAlike(1, { kind: "backcomb" }) }, "cushion"],
  ]
  for (const [name, change, code] of refusals)
    it(`is refused where ${name}`, () => {
      expect(heatRefusal(heated(change))?.code).toBe(code)
      expect(planService(heated(change)).heat).toBeNull()
    })
})

describe("after the last foil", () => {
  it("comes the rinse, detangling only of a backcomb, toners together, drying; and a range for the chair", () => {
    const range = { low: 1, mid: 2, high: 3 }
    const service = timedService([timedFoil("a", { kind: "backcomb" })], {
      finish: {
        rinsingMin: always(8),
        detanglingMin: always(10),
        toners: [
          { zone: "mids", minutes: always(15) },
          { zone: "hairline", minutes: always(5) },
        ],
        dryingMin: range,
      },
    })
    const schedule = planService(service)
    expect(schedule.steps).toEqual([
      { kind: "rinse", fromMin: 26, toMin: 34 },
      { kind: "detangle", fromMin: 34, toMin: 44 },
      { kind: "toner", zone: "mids", fromMin: 44, toMin: 59 },
      { kind: "toner", zone: "hairline", fromMin: 54, toMin: 59 },
      { kind: "dry", fromMin: 59, toMin: 61 },
    ])
    // Ready at 18, 26 or 34, then 8 + 10 + 15, then 1, 2 or 3.
    expect(schedule.chairMin).toEqual({ low: 52, mid: 61, high: 70 })
  })
})

describe("the rest of a service that has begun", () => {
  it("keeps first contacts, and goes on from now", () => {
    const soFar = { nowMin: 20, onAtMin: { f1: 2, f2: 9 }, offAtMin: {}, mixedAtMin: [1] }
    const schedule = planService(
      timedService(foilsAlike(4), { soFar, mixes: [timedMix("A", { mixingMin: always(2) })] }),
    )
    expect(onAt(schedule)).toEqual([2, 9, 20, 21.5]) // the bowl is mixed already
    expect(offAt(schedule)).toEqual([28, 35, 46, 47.5])
    expect(schedule.bowls[0].mixedAtMin).toBe(1)
  })
  it("takes a foil off at once that is past its limit", () => {
    const soFar = { nowMin: 60, onAtMin: { f1: 2 }, offAtMin: {}, mixedAtMin: [] }
    const schedule = planService(timedService(foilsAlike(2), { soFar }))
    expect(schedule.foils[0].offAtMin).toBe(60)
  })
})

describe("a service that cannot be timed", () => {
  const cases: [string, Partial<Service>, string][] = [
    ["no foils", { foils: [] }, "There are no foils to time: draw one first."],
    [
      "pace 0",
      { foils: foilsAlike(1, { placeMin: always(0) }) },
      "Foil 1: the pace is 0; enter minutes per foil above 0.",
    ],
    [
      "a limit of 0",
      { foils: foilsAlike(1, { limitMin: 0 }) },
      "Foil 1: the product’s max time must be above 0",
    ],
    ["an unknown mix", { foils: foilsAlike(1, { mix: "Z" }) }, "Foil 1: there is no mix Z."],
    ["the same foil twice", { foils: [timedFoil("a"), timedFoil("a")] }, "Foil 1 is in the plan twice."],
    ["three pairs of hands", { hands: [person(), person(), person()] }, "not 3"],
    [
      "a break that ends before it begins",
      { hands: [person({ breaks: [{ fromMin: 9, toMin: 3 }] })] },
      "break",
    ],
    ["looks that are not apart", { looks: { firstMin: 10, firstDelicateMin: 5, everyMin: 0 } }, "Checks"],
    ["a bowl that holds nothing", { mixes: [timedMix("A", { bowlG: 0 })] }, "Mix A: a bowl must hold"],
    ["a foil no bowl serves", { bowls: [{ mix: "A", foils: [] }] }, "Foil 1: no bowl of mix A serves it."],
  ]
  for (const [name, change, sentence] of cases)
    it(`says so: ${name}`, () =>
      expect(
        serviceProblems(timedService(foilsAlike(1), change))
          .map((problem) => say(en.timing.problems, problem))
          .join(" "),
      ).toContain(sentence))
  it("and says nothing of one that can", () =>
    expect(serviceProblems(timedService(foilsAlike(3)))).toEqual([]))
})

describe("how fast", () => {
  it("plans 120 foils again within 5 ms of the processor, whatever else the machine does", async () => {
    const service = timedService(foilsAlike(120), { wipingMin: always(0.5), hands: [person(), person()] })
    const times: number[] = []
    for (let i = 0; i < 240; i++) times.push(await processorMs(() => planService(service)))
    // The faster quarter: the first are not compiled yet.
    expect(times.sort((a, b) => a - b)[60]).toBeLessThan(5)
  })
})
