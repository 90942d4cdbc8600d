import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { liftsFirstShare } from "../../../../presets/timing/lift"
import { newConsultation } from "../../../../web/core/document/consultation"
import type { Plan } from "../../../../web/core/document/schema"
import { usualTiming } from "../../../../web/core/document/usualTiming"
import { setTiming } from "../../../../web/core/edits/plan/setTiming"
import { takesAtHairline } from "../../../../web/core/figures/hairAtHairline"
import { headOf } from "../../../../web/core/figures/measured"
import { readyFirst } from "../../../../web/core/lift/liftsFirst"
import { timedPlan } from "../../../../web/core/schedule/timedPlan"
import { busyPlan } from "../../../support/busyPlan"
import { done } from "../../../support/samples"

const busy = busyPlan(40)
const isAtHairline = (id: string, plan: Plan = busy) =>
  plan.sections.some((section) => section.id === id && takesAtHairline(section, headOf(plan)))
const clock = (plan: Plan) => {
  const timed = timedPlan(plan)
  if (!timed.ok) throw new Error(timed.problems.map(({ code }) => code).join(" "))
  return timed
}
const share = liftsFirstShare
const lifted = done(setTiming({ lift: { fromLevel: 6, toLevel: 8 } }), busy)
const seen: Plan = {
  ...lifted,
  timing: {
    ...usualTiming,
    ...lifted.timing,
    strandTest: {
      product: busy.mixes[0].product,
      developerVolume: busy.mixes[0].developerVolume,
      startLevel: 6,
      rows: [{ minutes: 20, level: 7.5 }],
    },
  },
}
const fine = (plan: Plan): Plan => ({ ...plan, hair: { ...plan.hair, fibreUm: 55 } })

describe("hair that lifts first", () => {
  it("is expected ready sooner at the hairline than the rest, over a range that ends with the rest", () => {
    const { foils } = clock(busy).service
    const first = foils.filter(({ id }) => isAtHairline(id))
    const rest = foils.filter(({ id }) => !isAtHairline(id))
    expect([first.length > 0, rest.length > 0]).toEqual([true, true])
    // 18, 26 and 34 are when most foils are ready; 0.7 x 18 = 12.6, 0.9 x 26 = 23.4.
    for (const { readyMin } of rest) expect(readyMin.A).toEqual({ low: 18, mid: 26, high: 34 })
    for (const { readyMin } of first) {
      expect(readyMin.A.low).toBeCloseTo(12.6, 9)
      expect(readyMin.A.mid).toBeCloseTo(23.4, 9)
      expect(readyMin.A.high).toBe(34)
    }
  })

  it("comes off sooner, is looked at sooner, and the clock says that it assumes so", () => {
    const { schedule, service, assumed } = clock(busy)
    const minutesOn = (atHairline: boolean) =>
      schedule.foils.filter(({ id }) => isAtHairline(id) === atHairline).map(({ onMin }) => onMin)
    expect(Math.min(...minutesOn(true))).toBeLessThan(Math.min(...minutesOn(false)))
    for (const { id, delicate } of service.foils) expect(delicate).toBe(isAtHairline(id))
    expect(assumed).toContainEqual({ code: "lifts-first", hair: "hairline", low: 0.7, high: 1, lookMin: 5 })
  })

  it("is fine hair anywhere on the head, until a strand of it was looked at; of the hairline that says nothing", () => {
    const ready = (plan: Plan, atHairline: boolean) =>
      clock(plan).service.foils.find(({ id }) => isAtHairline(id) === atHairline)?.readyMin.A.mid ?? 0
    expect(ready(fine(lifted), false)).toBeCloseTo(share.mid * ready(lifted, false), 9)
    expect(ready(fine(seen), false)).toBe(ready(seen, false))
    expect(ready(seen, true)).toBeCloseTo(share.mid * ready(seen, false), 9)
  })

  it("is so at its own level too, and where it is darker it still takes its own minutes", () => {
    const level = (at: number) => ({
      roots: { level: at, history: null, porosity: null, stretch: null },
    })
    const hair = { hairline: level(5), top: level(7), left: level(7), right: level(7), back: level(7) }
    const plan = { ...busy, consultation: { ...newConsultation(), hair, liftToLevel: 8 } }
    const { foils } = clock(plan).service
    const mid = (zone: string) => foils.find((foil) => foil.zone === zone)?.readyMin.A.mid ?? 0
    expect(mid("hairline")).toBeGreaterThan(mid("top"))
  })

  it("is never later than the rest, nor without a range", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 60, noNaN: true }),
        fc.oneof(fc.double({ min: 0, max: 60, noNaN: true }), fc.constant(Number.POSITIVE_INFINITY)),
        (low, more, evenMore) => {
          const ready = { low, mid: low + more, high: low + more + evenMore }
          const first = readyFirst(ready)
          for (const end of ["low", "mid", "high"] as const)
            expect(first[end]).toBeLessThanOrEqual(ready[end])
          expect(first.low).toBeLessThanOrEqual(first.mid)
          expect(first.mid).toBeLessThanOrEqual(first.high)
          expect(first.high - first.low).toBeGreaterThanOrEqual(ready.high - ready.low)
        },
      ),
    ))
})
