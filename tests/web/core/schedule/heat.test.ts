import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { callCode } from "../../../../web/core/chair/callCode"
import type { Chair, Tap } from "../../../../web/core/chair/chair"
import { startChair, tapChair } from "../../../../web/core/chair/chairClock"
import { dueWithin, soFarOf } from "../../../../web/core/chair/chairDue"
import { dueCalls } from "../../../../web/core/chair/dueCalls"
import { heatRefusal } from "../../../../web/core/schedule/heatRefusal"
import { hastened, heatFactor } from "../../../../web/core/schedule/scheduleHeat"
import { planService } from "../../../../web/core/schedule/timing"
import { always, foilsAlike, timedMix, timedService } from "../../../support/timedService"

const mixes = [timedMix("A", { heatMostMin: 10 })]
const heated = (warmthC: number | null) =>
  timedService(foilsAlike(3, { readyMin: { A: always(26) } }), { mixes, heat: { minutes: 8, warmthC } })

describe("minutes under heat", () => {
  it("count as many times as they are faster: worked by hand", () => {
    // 26 minutes' work, twice as fast from 10 to 18: 10 + 16 by then, which is all of it.
    expect(hastened(26, 2, { fromMin: 10, toMin: 18 })).toBe(18)
    // From 10 to 14 only: 10 + 8, and 8 more by itself.
    expect(hastened(26, 2, { fromMin: 10, toMin: 14 })).toBe(22)
    // Ready before the heat comes, or when it has gone.
    expect(hastened(9, 2, { fromMin: 10, toMin: 18 })).toBe(9)
    expect(hastened(26, 2, { fromMin: -20, toMin: -12 })).toBe(26)
    expect(hastened(Number.POSITIVE_INFINITY, 2, { fromMin: 10, toMin: 18 })).toBe(Number.POSITIVE_INFINITY)
  })
  it("are 1.7 to 2.0 times as fast at 40 C as at 32 C: 53 and 71 kJ/mol", () => {
    // exp(53 / 0.0083145 x (1/305.15 - 1/313.15)) = exp(6374.4 x 8.3718e-5) = 1.705; 71: exp(0.71489) = 2.044
    const { low, mid, high } = heatFactor(40)
    expect(low).toBeCloseTo(1.705, 3)
    expect(mid).toBeCloseTo(1.867, 3) // 62: exp(0.62427)
    expect(high).toBeCloseTo(2.044, 3)
  })
  it("are no slower in air cooler than the scalp, and the range is wide where nobody has measured", () => {
    expect(heatFactor(30)).toEqual({ low: 1, mid: 1, high: 1 })
    expect(heatFactor(null).high / heatFactor(null).low).toBeGreaterThan(1.5)
  })
  it("never make a foil ready later, nor sooner than if all its minutes were heated", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 60, noNaN: true }),
        fc.double({ min: 1, max: 3, noNaN: true }),
        fc.double({ min: -30, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 10, noNaN: true }),
        (minutes, factor, fromMin, heatMin) => {
          const ready = hastened(minutes, factor, { fromMin, toMin: fromMin + heatMin })
          expect(ready).toBeLessThanOrEqual(minutes + 1e-9)
          expect(ready).toBeGreaterThanOrEqual(minutes / factor - 1e-9)
        },
      ),
    ))
})

describe("a service with heat", () => {
  it("has its foils ready sooner, over a range, and ends the heat with a look", () => {
    // All on at 4.5. The first has 4.5 minutes by then; 8 minutes of heat save it 8 (f - 1) of its 26.
    const schedule = planService(heated(40))
    const [first] = schedule.foils
    const { low, mid, high } = heatFactor(40)
    expect(first.readyMin.low).toBeCloseTo(26 - 8 * (high - 1), 9)
    expect(first.readyMin.mid).toBeCloseTo(26 - 8 * (mid - 1), 9)
    // Slowest: the lag may last 5 minutes, half a minute of the heat.
    expect(first.readyMin.high).toBeCloseTo(26 - 7.5 * (low - 1), 9)
    expect(first.onMin).toBeCloseTo(first.readyMin.mid, 9)
    expect(schedule.looksAtMin).toContain(12.5)
    expect(first.limitAtMin).toBe(45) // nothing lengthens it
  })
  it("is as long as without where the heat is left out", () => {
    const without = planService({ ...heated(40), heat: null })
    expect(planService({ ...heated(40), mixes: [timedMix("A")] })).toEqual(without)
  })
  it("is refused above 40 C", () => {
    expect(heatRefusal(heated(41))).toEqual({ code: "too-warm", ceilingC: 40, warmthC: 41 })
    expect(heatRefusal(heated(40))).toBeNull()
  })
  it("is planned again from when the heat was really on", () => {
    const onAtMin = { f1: 0, f2: 1.5, f3: 3 }
    const soFar = { nowMin: 10, onAtMin, offAtMin: {}, mixedAtMin: [], heat: { onAtMin: 6, offAtMin: null } }
    expect(planService({ ...heated(40), soFar }).heat).toMatchObject({ onAtMin: 6, offAtMin: 14 })
    const over = { ...soFar, heat: { onAtMin: 6, offAtMin: 9 } }
    expect(planService({ ...heated(40), soFar: over }).heat).toMatchObject({ onAtMin: 6, offAtMin: 9 })
  })
})

const minute = 60_000
const at = (minutes: number) => ({
  load: "one",
  monotonicMs: minutes * minute,
  wallMs: 1e12 + minutes * minute,
})
const foils = [{ id: "a", mapNumber: 1, limitMin: 45, firstLookMin: 10 }]
const play = (chair: Chair, ...taps: readonly (readonly [number, Tap])[]) =>
  taps.reduce((now, [when, tap]) => tapChair(now, tap, { at: at(when), revision: now.revision }).chair, chair)
const chair = play(startChair(foils, at(0), 8), [1, { kind: "on", foil: "a" }], [3, { kind: "heat-on" }])

describe("heat at the chair", () => {
  it("is called off after its minutes, and then comes a look", () => {
    expect(dueWithin(chair, 10 * minute)).toEqual([
      { kind: "heat-off", foil: null, inMs: 8 * minute },
      { kind: "look", foil: "a", inMs: 8 * minute }, // 1 + 10 = 11
    ])
    const off = play(chair, [9, { kind: "heat-off" }])
    expect(dueWithin(off, 0)).toEqual([{ kind: "look", foil: "a", inMs: 0 }])
    expect(soFarOf(off).heat).toEqual({ onAtMin: 3, offAtMin: 9 })
  })
  it("says so, louder when it is late", () => {
    const words = (now: Chair) => dueCalls(now, { lookMs: minute, limitMs: 0 }).map(callCode)
    const late = tapChair(chair, { kind: "undo" }, { at: at(12), revision: 0 }).chair // refused: only time goes by
    expect(words(late)[0]).toEqual({ code: "heat-past", byMs: minute })
  })
  it("comes once, only where it is planned, and goes only after it came", () => {
    const refusal = (now: Chair, tap: Tap) => tapChair(now, tap, { at: at(12), revision: now.revision }).said
    expect(refusal(chair, { kind: "heat-on" })).toEqual([{ code: "heat-once", state: "on", atMin: 3 }])
    expect(refusal(startChair(foils, at(0), 8), { kind: "heat-off" })).toEqual([{ code: "heat-never-on" }])
    expect(refusal(startChair(foils, at(0)), { kind: "heat-on" })).toEqual([{ code: "no-heat-planned" }])
  })
})
