import { describe, expect, test } from "vitest"
import { productG } from "../../geometry/hair/product"
import { isFoil } from "../../geometry/section/section"
import { tradeFigures } from "../../presets/formula/tradeFigures"
import { newSalon } from "../../web/core/document/salon"
import { figuresFor } from "../../web/core/figures/figuresFor"
import { gramsFor, learn, priorBelief } from "../../web/core/grams/calibration"
import { learntOf } from "../../web/core/weighing/learnt"
import { drawNeed, drawSalon, salonDice, weigh } from "../support/drawnSalon"
import { samplePlan } from "../support/samples"

/**
 * The range that a plan itself prints, by what its salon has learnt, or by the starting figures until there is enough:
 * salons drawn from the prior as in calibrationCoverage.test.ts, then the bowl each weighs next. 1,500 salons have a
 * standard error of 1 %.
 */
const prior = priorBelief(tradeFigures)
const salons = 1500
const [foil] = samplePlan.sections.filter(isFoil)
const product = samplePlan.mixes[0].product

/** Bowls as they are drawn, then fine weaves of short hair and wide slices of long hair that the salon never weighed. */
const bowlsNext = {
  "like those weighed": [],
  "of fine, short hair": [
    [0.2, 0.4],
    [100, 300],
  ],
  "of long, heavy hair": [
    [1.5, 3],
    [300, 700],
  ],
} as const

const kinds = Object.keys(bowlsNext) as (keyof typeof bowlsNext)[]

describe.each([0, 1, 3, 8, 20])("after %i weighed bowls", (bowls) => {
  const dice = salonDice(4_711 + bowls)
  const held = { "like those weighed": 0, "of fine, short hair": 0, "of long, heavy hair": 0 }
  for (let i = 0; i < salons; i++) {
    const salon = drawSalon(prior, dice)
    const bowl = () => ({ ...weigh(salon, drawNeed(dice), { prior, dice }), product, kind: null })
    const learnt = learntOf(Array.from({ length: bowls }, bowl))
    const figures = figuresFor(foil, { ...samplePlan, salon: { ...newSalon(), learnt } })
    for (const kind of kinds) {
      const next = weigh(salon, drawNeed(dice, ...bowlsNext[kind]), { prior, dice })
      const { low, high } = productG(next, figures)
      if (low <= next.productG && next.productG <= high) held[kind]++
    }
  }

  test.each(kinds)("the plan's range holds the next bowl, one %s, 76 to 84 times in 100", (kind) => {
    expect(held[kind] / salons).toBeGreaterThan(0.76)
    expect(held[kind] / salons).toBeLessThan(0.84)
  })
})

test("a plan that nothing was weighed for prints the range of the first bowl there, within 4 %", () => {
  const figures = figuresFor(foil, samplePlan)
  const belief = learn(prior, [])
  for (const hairG of [4, 10, 16]) {
    const need = { panels: 10, hairG, strandAreaCm2: 3000 }
    const [printed, next] = [productG(need, figures), gramsFor(belief, need, prior)]
    expect(printed.mid).toBeCloseTo(next.mid, 9)
    expect(Math.abs((printed.high - printed.low) / (next.high - next.low) - 1)).toBeLessThan(0.04)
  }
})
