import fc from "fast-check"
import { describe, expect, it } from "vitest"
import type { LiftConditions, LiftTraits } from "../../../../web/core/lift/lift"
import {
  activationFrom,
  isOnScale,
  levelsGained,
  minutesToGain,
  strengthFactor,
} from "../../../../web/core/lift/lift"
import { gainedRange, priorTraits, readyRange } from "../../../../web/core/lift/liftGrid"
import { goalRefusal } from "../../../../web/core/lift/scheduleReady"

const conditions: LiftConditions = {
  onHeadPercent: 6,
  temperatureC: 32,
  longestMin: 42,
  printed: { low: 2, high: 3.1 },
}
/** Half of what is still to come in 10 minutes, after 2 without any: 42 minutes are 4 halvings, 15/16 of all. */
const traits: LiftTraits = {
  printedLevels: 3,
  halfTimeMin: 10,
  lagMin: 2,
  strengthPower: 1,
  activationKJ: 60,
}

describe("the lift of one head", () => {
  it("is nothing in the lag, then slower and slower, then what the sheet prints, then no more", () => {
    expect(levelsGained(traits, conditions, 2)).toBe(0)
    expect(levelsGained(traits, conditions, 12)).toBeCloseTo(1.6, 12) // 3 x (1/2) / (15/16)
    expect(levelsGained(traits, conditions, 22)).toBeCloseTo(2.4, 12) // 3 x (3/4) / (15/16)
    expect(levelsGained(traits, conditions, 42)).toBeCloseTo(3, 12)
    expect(levelsGained(traits, conditions, 400)).toBeCloseTo(3, 12)
  })
  it("finds its way back from levels to minutes", () => {
    expect(minutesToGain(traits, conditions, 1.6)).toBeCloseTo(12, 9)
    expect(minutesToGain(traits, conditions, 2.4)).toBeCloseTo(22, 9)
    expect(minutesToGain(traits, conditions, 3.05)).toBe(Number.POSITIVE_INFINITY)
    expect(minutesToGain(traits, conditions, 0)).toBe(0)
  })
  it("goes with the strength to a power: twice as strong, half the half time", () => {
    // 3 x (1/2) / (1 - 2^-8) after the lag and one half time of 5 minutes
    expect(levelsGained(traits, { ...conditions, onHeadPercent: 12 }, 7)).toBeCloseTo((1.5 * 256) / 255, 12)
    expect(strengthFactor(3, 0.5)).toBeCloseTo(Math.SQRT1_2, 12)
  })
  it("is sooner there in the warm, and never past the sheet's ceiling", () => {
    const activationKJ = activationFrom(2, 32, 39)
    const warm = { ...conditions, temperatureC: 39 }
    expect(levelsGained({ ...traits, activationKJ }, warm, 7)).toBeCloseTo(1.6, 12) // as at 12 minutes, twice as fast
    expect(levelsGained({ ...traits, activationKJ }, warm, 42)).toBe(3.1) // 3 x (255/256) / (15/16) would be 3.19
  })
  it("counts no lift after 45 minutes, however long the sheet allows", () => {
    const long = { ...conditions, longestMin: 60 }
    expect(levelsGained(traits, long, 45)).toBeCloseTo(levelsGained(traits, long, 60), 12)
  })
  it("gains nothing where the longest time is over before the lag", () =>
    expect(levelsGained(traits, { ...conditions, longestMin: 1 }, 30)).toBe(0))
})

describe("the lift of any head", () => {
  const prior = priorTraits(conditions.printed)
  it("has weights that add up to 1", () =>
    expect(prior.reduce((total, { weight }) => total + weight, 0)).toBeCloseTo(1, 12))
  it("is a range that opens with time and stays under the ceiling", () => {
    const { low, mid, high } = gainedRange(prior, conditions, 30)
    expect(low).toBeLessThan(mid)
    expect(mid).toBeLessThan(high)
    expect(gainedRange(prior, conditions, 42).high).toBeLessThanOrEqual(3.1)
    expect(gainedRange(prior, conditions, 1)).toEqual({ low: 0, mid: 0, high: 0 })
  })
  it("is ready later for a higher goal, and later in a weaker mix", () =>
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 2.5, noNaN: true }), (levels) => {
        const [near, far] = [levels, levels + 0.3].map((goal) => readyRange(prior, conditions, goal))
        const weak = readyRange(prior, { ...conditions, onHeadPercent: 3 }, levels)
        for (const end of ["low", "mid", "high"] as const) {
          expect(far[end]).toBeGreaterThanOrEqual(near[end])
          expect(weak[end]).toBeGreaterThanOrEqual(near[end])
        }
      }),
      { numRuns: 20 },
    ))
})

describe("a level no lift is worked out for", () => {
  it("is one off the scale", () => {
    expect(goalRefusal({ fromLevel: 6, toLevel: 11 })).toEqual({
      code: "to-off-scale",
      level: 11,
      darkest: 1,
      lightest: 10,
    })
    expect(goalRefusal({ fromLevel: 0, toLevel: 9 })).toMatchObject({ code: "from-off-scale", level: 0 })
    expect(isOnScale(Number.NaN)).toBe(false)
  })
  it("is none on it, its ends among them", () => expect([1, 6.5, 10].every(isOnScale)).toBe(true))
})
