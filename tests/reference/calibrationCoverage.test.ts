import { describe, expect, test } from "vitest"
import type { Range } from "../../geometry/hair/tradeFigures"
import { tradeFigures } from "../../presets/formula/tradeFigures"
import { gramsFor, learn, learntFigures, priorBelief } from "../../web/core/grams/calibration"
import { drawNeed, drawSalon, salonDice, trueGrams, weigh } from "../support/drawnSalon"

/**
 * Salons drawn from the prior itself: scatter and figures as believed before weighing, and bowls of 4 to 12 foils
 * scattered about their truth. Then what the ranges promise must hold, to the luck of 2,000 draws (sd 0.9 %).
 */
const prior = priorBelief(tradeFigures)
const names = ["lossG", "soakGPerG", "coatMgPerCm2"] as const
const salons = 2000

const isIn = ({ low, high }: Range, value: number) => low <= value && value <= high
const shareOf = (hits: readonly boolean[]) => hits.filter(Boolean).length / hits.length

/** For each salon: what it believes after so many bowls, and the bowl it weighs next. */
function weighSalons(bowls: number) {
  const dice = salonDice(20_261 + bowls)
  return Array.from({ length: salons }, () => {
    const salon = drawSalon(prior, dice)
    const weighed = Array.from({ length: bowls }, () => weigh(salon, drawNeed(dice), { prior, dice }))
    return { salon, belief: learn(prior, weighed), next: weigh(salon, drawNeed(dice), { prior, dice }) }
  })
}

function expectEightInTen(held: readonly boolean[]) {
  expect(shareOf(held)).toBeGreaterThan(0.76)
  expect(shareOf(held)).toBeLessThan(0.84)
}

describe.each([0, 1, 3, 8, 20])("after %i weighed bowls", (bowls) => {
  const runs = weighSalons(bowls)

  test("the 80 % range holds the next bowl 76 to 84 % of the time", () => {
    expectEightInTen(runs.map(({ belief, next }) => isIn(gramsFor(belief, next, prior), next.productG)))
  })

  test.each(names)("and the true %s as often", (name) => {
    const j = names.indexOf(name)
    expectEightInTen(runs.map(({ salon, belief }) => isIn(learntFigures(belief)[name], salon.truth[j])))
  })
})

test("after 8 weighed bowls the middle figure is within 15 % of the truth for 90 % of salons", () => {
  const near = weighSalons(8).map(
    ({ salon, belief, next }) =>
      Math.abs(gramsFor(belief, next, prior).mid / trueGrams(salon, next) - 1) <= 0.15,
  )
  expect(shareOf(near)).toBeGreaterThan(0.9)
})
