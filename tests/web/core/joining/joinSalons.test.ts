import { describe, expect, it } from "vitest"
import { tradeFigures } from "../../../../presets/formula/tradeFigures"
import { joiningFigures } from "../../../../presets/weighing/joiningFigures"
import { gramsFor, priorBelief } from "../../../../web/core/grams/calibration"
import { beliefOf, gramsStart, startBelief } from "../../../../web/core/grams/startBelief"
import { joinSalons } from "../../../../web/core/joining/joinSalons"
import type { LearnRow } from "../../../../web/core/joining/learnRow"
import { salonDice } from "../../../support/drawnSalon"
import { bowlRows, knownTruth, paceRows, strandRows } from "../../../support/knownSalons"

const trade = priorBelief(tradeFigures)

describe("thirty salons of known truth", { timeout: 120_000 }, () => {
  it("say what they differ by: near 10 % in soak, the figure that weighs most", () => {
    const dice = salonDice(77)
    const { start, spread } = joinSalons(Array.from({ length: 30 }, () => bowlRows(dice, 10)))
    const shares = spread.grams?.shares ?? []
    expect(spread.grams).toMatchObject({ salons: 30, weighings: 300 })
    expect(shares[1]).toBeGreaterThan(0.05)
    expect(shares[1]).toBeLessThan(0.15)
    expect(Math.abs((start.grams?.soakGPerG.mid ?? 0) / knownTruth.middles[1] - 1)).toBeLessThan(0.1)
    expect(Math.abs((start.grams?.scatterShare ?? 0) / knownTruth.scatter - 1)).toBeLessThan(0.25)
  })
})

describe("fewer salons", () => {
  it("leave the range of a new one wider: four against thirty", () => {
    const widthOf = (salons: number) => {
      const dice = salonDice(501)
      const belief = startBelief(joinSalons(Array.from({ length: salons }, () => bowlRows(dice, 6))).start)
      const { low, high } = gramsFor(belief, { panels: 8, hairG: 8, strandAreaCm2: 2400 }, belief)
      return high - low
    }
    expect(widthOf(4)).toBeGreaterThan(widthOf(30))
  })

  it("than three change nothing: each figure stays the trade's", () => {
    const dice = salonDice(3)
    const two = [1, 2].map(() => [...bowlRows(dice, 10), ...strandRows(dice, 2), ...paceRows(dice, 2, 10)])
    expect(joinSalons(two).start).toEqual({ salons: 2, grams: null, halfTimeMin: null, paceMin: null })
    expect(startBelief(joinSalons(two).start)).toEqual(trade)
    expect(joiningFigures.leastSalons).toBe(3)
  })
})

describe("strands and paces", () => {
  const dice = salonDice(12_345)
  const salons = Array.from({ length: 30 }, (): LearnRow[] => [
    ...strandRows(dice, 4),
    ...paceRows(dice, 2, 20),
  ])
  const { start, spread } = joinSalons(salons)

  it("tell the half time of heads in a new salon, two thirds of which lie within", () => {
    // ln 13 +- the root of 0.1^2 + 0.2^2: 10.4 to 16.3.
    expect(spread.halfTime?.strands).toBeGreaterThan(100)
    const { low, high } = start.halfTimeMin ?? { low: 0, high: 0 }
    expect(Math.abs(Math.log(low / 10.4))).toBeLessThan(0.12)
    expect(Math.abs(Math.log(high / 16.3))).toBeLessThan(0.12)
  })

  it("tell minutes a slice for new hands, and leave the kinds that nobody timed", () => {
    const { slice, weave } = start.paceMin ?? { slice: null, weave: null }
    // 1.8 x exp(-+ 1.31 x root of 0.15^2 + 0.1^2): 1.42 to 2.28, with Student's 1.31 for 29 degrees.
    expect(Math.abs(Math.log((slice?.low ?? 0) / 1.42))).toBeLessThan(0.1)
    expect(Math.abs(Math.log((slice?.high ?? 0) / 2.28))).toBeLessThan(0.1)
    expect(weave).toEqual({ low: 1.5, mid: 2, high: 2.5 })
    expect(Math.sqrt(spread.pace.slice?.between ?? 0)).toBeGreaterThan(0.07)
    expect(Math.sqrt(spread.pace.slice?.between ?? 0)).toBeLessThan(0.23)
    expect(spread.pace.weave).toBeNull()
  })

  it("hold four new hands in five, over twenty thirties of salons", () => {
    let [held, all] = [0, 0]
    for (let world = 0; world < 20; world++) {
      const thirty = Array.from({ length: 30 }, () => paceRows(dice, 2, 20))
      const slice = joinSalons(thirty).start.paceMin?.slice ?? { low: 0, high: 0 }
      for (const row of Array.from({ length: 100 }, () => paceRows(dice, 1, 200)).flat()) {
        all++
        if (row.row === "pace" && slice.low <= row.minutes && row.minutes <= slice.high) held++
      }
    }
    expect(held / all).toBeGreaterThan(0.76)
    expect(held / all).toBeLessThan(0.84)
  })
})

it("goes to a file's figures and back", () => {
  const dice = salonDice(8)
  const { start } = joinSalons([1, 2, 3].map(() => bowlRows(dice, 5)))
  if (!start.grams) throw new Error("three salons are enough")
  const belief = beliefOf(start.grams)
  const again = beliefOf(gramsStart(belief))
  belief.precision.flat().forEach((value, i) => {
    expect(again.precision.flat()[i] / value).toBeCloseTo(1, 9)
  })
  expect(again.scale).toBeCloseTo(belief.scale, 12)
  expect(beliefOf(gramsStart(trade)).precision[0][0]).toBeCloseTo(trade.precision[0][0], 9)
})
