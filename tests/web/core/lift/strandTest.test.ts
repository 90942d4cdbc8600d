import { describe, expect, it } from "vitest"
import type { LiftConditions, LiftTraits } from "../../../../web/core/lift/lift"
import { levelsGained } from "../../../../web/core/lift/lift"
import { priorTraits, readyRange, weighByRows } from "../../../../web/core/lift/liftGrid"
import type { LevelSeen } from "../../../../web/core/lift/strandTest"
import { lookWindow, narrowLift } from "../../../../web/core/lift/strandTest"
import { say } from "../../../../web/words/say"
import { en } from "../../../support/words"

const conditions: LiftConditions = {
  onHeadPercent: 6,
  temperatureC: 32,
  longestMin: 45,
  printed: { low: 5, high: 6 },
}
const prior = priorTraits(conditions.printed)
const narrow = (rows: readonly LevelSeen[]) => {
  const narrowed = narrowLift(prior, { rows, startLevel: 5, conditions })
  if ("refused" in narrowed) throw new Error(narrowed.refused.code)
  return narrowed
}
const refused = (rows: readonly LevelSeen[]) => {
  const narrowed = narrowLift(prior, { rows, startLevel: 5, conditions })
  return "refused" in narrowed ? say(en.client.strandFaults, narrowed.refused) : null
}

describe("Bayes on a grid", () => {
  it("weighs two possibilities by the likelihood of what was seen", () => {
    // Seen 1; foretold 1 and 2 with an error of 0.5: likelihoods 1 and exp(-2); prior 1 : 3.
    const grid = [
      { of: 1, weight: 0.25 },
      { of: 2, weight: 0.75 },
    ]
    const [first, second] = weighByRows(grid, [{ minutes: 10, seen: 1 }], { foretell: (of) => of, sd: 0.5 })
    expect(first.weight).toBeCloseTo(1 / (1 + 3 * Math.exp(-2)), 12)
    expect(first.weight + second.weight).toBeCloseTo(1, 12)
  })
  it("comes to the same row by row as all at once", () => {
    const rows = [
      { minutes: 8, seen: 1.5 },
      { minutes: 20, seen: 3 },
    ]
    const fit = {
      foretell: (of: LiftTraits, minutes: number) => levelsGained(of, conditions, minutes),
      sd: 0.5,
    }
    const together = weighByRows(prior, rows, fit)
    const inTurn = weighByRows(weighByRows(prior, rows.slice(0, 1), fit), rows.slice(1), fit)
    for (const at of [0, 700, 3100]) expect(inTurn[at].weight).toBeCloseTo(together[at].weight, 14)
  })
})

describe("a strand test", () => {
  const rows = [
    { minutes: 8, level: 6 },
    { minutes: 14, level: 7.5 },
    { minutes: 20, level: 8.5 },
  ]
  it("narrows when hair may be ready", () => {
    const before = readyRange(prior, conditions, 3)
    const after = readyRange(narrow(rows).traits, conditions, 3)
    expect(after.high - after.low).toBeLessThan(0.8 * (before.high - before.low))
  })
  it("moves toward what was seen: fast hair sooner, slow hair later", () => {
    const usual = readyRange(prior, conditions, 3).mid
    expect(readyRange(narrow([{ minutes: 8, level: 8 }]).traits, conditions, 3).mid).toBeLessThan(usual)
    expect(readyRange(narrow([{ minutes: 20, level: 6 }]).traits, conditions, 3).mid).toBeGreaterThan(usual)
  })
  it("says how far it lies from the curve", () => {
    expect(narrow(rows).misfitLevels).toBeLessThan(0.4)
    expect(narrow([{ minutes: 2, level: 10 }]).misfitLevels).toBeGreaterThan(2)
  })
  it("stays a range when rows are far from anything expected", () => {
    const { traits } = narrow([{ minutes: 1, level: 10 }])
    expect(traits.every(({ weight }) => Number.isFinite(weight))).toBe(true)
  })
})

describe("rows seen darker than one before", () => {
  // An eye is off by half a level: two of those, a level, are what eyes see.
  it("are taken as seen, up to a level without a word", () => {
    const rows = [
      { minutes: 10, level: 7 },
      { minutes: 15, level: 6 },
    ]
    expect(narrow(rows).darker).toEqual([])
    const [without, then] = [narrow(rows.slice(0, 1)), narrow(rows)].map(
      ({ traits }) => readyRange(traits, conditions, 3).mid,
    )
    expect(then).toBeGreaterThan(without)
  })
  it("are told beyond that, by row, and taken all the same", () => {
    const rows = [
      { minutes: 10, level: 8 },
      { minutes: 15, level: 7.5 },
      { minutes: 20, level: 6.5 },
    ]
    expect(narrow(rows).darker).toEqual([{ code: "darker", row: 3, level: 6.5, beforeLevel: 8 }])
    expect(narrow([{ minutes: 10, level: 3.5 }]).darker).toMatchObject([{ row: 1, beforeLevel: 5 }])
  })
})

describe("rows that cannot be", () => {
  const cases: [string, readonly LevelSeen[], string][] = [
    ["none", [], "A strand test needs at least one row"],
    ["too many", Array.from({ length: 7 }, (_, at) => ({ minutes: at + 1, level: 6 })), "at most 6 rows"],
    [
      "time going backwards",
      [
        { minutes: 20, level: 7 },
        { minutes: 15, level: 8 },
      ],
      "Row 2 is at 15 min, not after 20 min. Put the rows in order of time.",
    ],
    [
      "above the scale",
      [{ minutes: 10, level: 11 }],
      "Row 1: level 11 is off the scale, which runs from 1 to 10.",
    ],
    ["past the limit", [{ minutes: 50, level: 9 }], "past the product’s max time of 45 min."],
    ["not a number", [{ minutes: 10, level: Number.NaN }], "Row 1: level – is off the scale"],
  ]
  for (const [name, rows, sentence] of cases)
    it(`are refused with a sentence: ${name}`, () => expect(refused(rows)).toContain(sentence))
})

describe("when to look", () => {
  it("is said from the first look to the longest time", () => {
    const window = { lookFromMin: 10, expectedMin: { low: 17.6, mid: 21, high: 25.2 }, neverPastMin: 45 }
    expect(en.client.lookWindow(window)).toBe(
      "Check from minute 10; expected ready at minute 17 to 26; max time 45 min.",
    )
  })
  it("says so when it may not be ready in time", () => {
    const never = Number.POSITIVE_INFINITY
    const slow = { lookFromMin: 10, expectedMin: { low: 30.5, mid: 40, high: never }, neverPastMin: 45 }
    expect(en.client.lookWindow(slow)).toBe(
      "Check from minute 10; expected ready from minute 30, perhaps not in time; max time 45 min.",
    )
    const far = { lookFromMin: 10, expectedMin: { low: never, mid: never, high: never }, neverPastMin: 45 }
    expect(en.client.lookWindow(far)).toBe(
      "Check from minute 10; not expected to be ready in time; max time 45 min.",
    )
  })
  it("begins sooner than the first look where hair may be ready before it", () => {
    const { lookFromMin, expectedMin } = lookWindow(prior, { conditions, levels: 0.5, firstLookMin: 10 })
    expect(lookFromMin).toBe(Math.floor(expectedMin.low))
    expect(lookFromMin).toBeLessThan(10)
  })
})
