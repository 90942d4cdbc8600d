import { describe, expect, test } from "vitest"
import {
  gramsFor,
  learn,
  learntFigures,
  observationOf,
  type ProductFigures,
  priorBelief,
  scatterG,
  type Weighing,
} from "../../../../web/core/grams/calibration"
import { doubtfulWeighings } from "../../../../web/core/weighing/doubtfulWeighings"
import { weighingsNeeded } from "../../../../web/core/weighing/weighingsNeeded"

const figures: ProductFigures = {
  lossG: { low: 0.1, mid: 0.3, high: 0.5 },
  soakGPerG: { low: 1.2, mid: 2, high: 2.8 },
  coatMgPerCm2: { low: 1.5, mid: 3, high: 4.5 },
}
const prior = priorBelief(figures)

/** Weighings of a salon that uses exactly 0.5 g a foil + 1.5 g/g + 4 mg/cm2. */
const exact = (panels: number, hairG: number, strandAreaCm2: number): Weighing => ({
  panels,
  hairG,
  strandAreaCm2,
  productG: 0.5 * panels + 1.5 * hairG + 0.004 * strandAreaCm2,
})
const bowls = [
  exact(8, 9.5, 2400),
  exact(10, 6, 3900),
  exact(5, 7, 900),
  exact(12, 8, 2000),
  exact(4, 2, 1700),
  exact(9, 12, 3100),
]

describe("before anything is weighed", () => {
  test("the ranges are those of the starting figures", () => {
    const learnt = learntFigures(prior)
    for (const name of ["lossG", "soakGPerG", "coatMgPerCm2"] as const)
      for (const end of ["low", "mid", "high"] as const)
        expect(learnt[name][end]).toBeCloseTo(figures[name][end], 10)
  })

  test("a slice of 1.2 g and 420 cm2 is 0.3 + 2.4 + 1.26 g", () => {
    const { low, mid, high } = gramsFor(prior, { panels: 1, hairG: 1.2, strandAreaCm2: 420 }, prior)
    expect(mid).toBeCloseTo(3.96, 10)
    expect(mid - low).toBeCloseTo(high - mid, 10)
  })

  test("scatter is 18 % of the grams, blurred by the scale", () => {
    // E[s2] = scale / (shape - 1), so scale / shape = 0.18^2 x 2 / 3.
    const need = { panels: 10, hairG: 12, strandAreaCm2: 4200 }
    const expected = 0.18 * Math.sqrt((2 / 3) * (39.6 ** 2 + 2 ** 2))
    expect(scatterG(prior, need, prior)).toBeCloseTo(expected, 10)
  })
})

describe("weighing", () => {
  test("draws the figures toward the salon's own, and narrows their ranges", () => {
    const once = learntFigures(learn(prior, bowls))
    const often = learntFigures(learn(prior, Array(40).fill(bowls).flat()))
    const truth = { lossG: 0.5, soakGPerG: 1.5, coatMgPerCm2: 4 }
    for (const name of ["lossG", "soakGPerG", "coatMgPerCm2"] as const) {
      const off = (learnt: ProductFigures) => Math.abs(learnt[name].mid - truth[name])
      const width = (learnt: ProductFigures) => learnt[name].high - learnt[name].low
      expect(off(once)).toBeLessThan(off(figures))
      expect(off(often)).toBeLessThan(off(once))
      expect(width(once)).toBeLessThan(width(figures))
      expect(width(often)).toBeLessThan(width(once))
      expect(off(often) / truth[name]).toBeLessThan(0.2)
    }
  })

  test("a weighing counts by the grams expected, never by what the scale said", () => {
    const [light, heavy] = [5, 50].map((productG) => observationOf({ ...bowls[0], productG }, prior).weight)
    expect(light).toBe(heavy)
  })

  test("no figure falls below 0, and none is -0", () => {
    const none = learntFigures(learn(prior, Array(300).fill({ ...bowls[0], productG: 0.01 })))
    for (const { low, mid, high } of Object.values(none))
      for (const value of [low, mid, high]) expect(value >= 0 && !Object.is(value, -0)).toBe(true)
  })
})

describe("doubt", () => {
  test("a bowl read 40 g too heavy among true ones is named, with what the others expect", () => {
    const rows = bowls.map((bowl, i) => (i === 3 ? { ...bowl, productG: bowl.productG + 40 } : bowl))
    const [doubt, ...others] = doubtfulWeighings(prior, rows)
    expect(others).toEqual([])
    expect(doubt.index).toBe(3)
    // 0.5 x 12 + 1.5 x 8 + 0.004 x 2000 = 26 g, as far as five bowls and the prior can tell.
    expect(doubt.weighedG).toBe(66)
    expect(Math.abs(doubt.expectedG - 26)).toBeLessThan(2)
  })

  test("true bowls are not doubted; one bowl is judged against the starting figures", () => {
    expect(doubtfulWeighings(prior, bowls)).toEqual([])
    expect(doubtfulWeighings(prior, [{ ...bowls[0], productG: 150 }])).toHaveLength(1)
  })
})

describe("how many weighings", () => {
  test("fewer remain after each one, none in the end, and the share is then within 15 %", () => {
    const left = [0, 2, 4, 6].map((n) => weighingsNeeded(prior, bowls.slice(0, n)).more ?? 999)
    expect(left[0]).toBeGreaterThan(2)
    expect(left).toEqual([...left].sort((a, b) => b - a))
    const settled = weighingsNeeded(prior, Array(5).fill(bowls).flat())
    expect(settled.more).toBe(0)
    expect(settled.withinShare).toBeLessThan(0.15)
  })

  test("weighings that disagree wildly ask for more than ones that agree", () => {
    const wild = bowls.map((bowl, i) => ({ ...bowl, productG: bowl.productG * (i % 2 ? 2.2 : 0.4) }))
    const more = weighingsNeeded(prior, wild).more
    expect(more === null || more > (weighingsNeeded(prior, bowls).more ?? 999)).toBe(true)
  })
})
