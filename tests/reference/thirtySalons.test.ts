import { describe, expect, it } from "vitest"
import { tradeFigures } from "../../presets/formula/tradeFigures"
import { gramsFor, priorBelief } from "../../web/core/grams/calibration"
import { startBelief } from "../../web/core/grams/startBelief"
import { joinSalons } from "../../web/core/joining/joinSalons"
import { salonDice } from "../support/drawnSalon"
import { bowlRows, drawKnownSalon } from "../support/knownSalons"

const trade = priorBelief(tradeFigures)

/** Thirty salons joined, then the first bowls of new ones; over several thirties, as one may be lucky. */
function firstBowls(worlds: number, bowls: number) {
  const [newSalons, seen] = [250, { held: 0, all: 0, widthG: 0, tradeG: 0 }]
  for (let world = 0; world < worlds; world++) {
    const dice = salonDice(9_100 + 31 * world)
    const { start } = joinSalons(Array.from({ length: 30 }, () => bowlRows(dice, bowls)))
    const belief = startBelief(start)
    for (let i = 0; i < newSalons; i++) {
      const bowl = drawKnownSalon(dice)()
      const [joined, before] = [gramsFor(belief, bowl, belief), gramsFor(trade, bowl, trade)]
      seen.all++
      if (joined.low <= bowl.productG && bowl.productG <= joined.high) seen.held++
      seen.widthG += joined.high - joined.low
      seen.tradeG += before.high - before.low
    }
  }
  return seen
}

describe("thirty salons of known truth", { timeout: 120_000 }, () => {
  it("tell a new salon its first bowl: the 80 % range holds it 76 to 84 % of the time, and is half as wide as before", () => {
    const { held, all, widthG, tradeG } = firstBowls(6, 10)
    expect(held / all).toBeGreaterThan(0.76)
    expect(held / all).toBeLessThan(0.84)
    expect(widthG / tradeG).toBeLessThan(0.5)
  })
})
