import { describe, expect, it } from "vitest"
import { randomEffects, withinVariance } from "../../../../web/core/statistics/randomEffects"

/**
 * The 13 trials of BCG against tuberculosis (Colditz et al., JAMA 1994;271:698), the usual example of meta-analysis: ill
 * and well, vaccinated and not. REML of their log risk ratios is published as mean -0.7145 (standard error 0.1798) and
 * variance between trials 0.3132 (Viechtbauer, J Stat Softw 2010;36(3), section 3).
 */
const trials = [
  [4, 119, 11, 128],
  [6, 300, 29, 274],
  [3, 228, 11, 209],
  [62, 13536, 248, 12619],
  [33, 5036, 47, 5761],
  [180, 1361, 372, 1079],
  [8, 2537, 10, 619],
  [505, 87886, 499, 87892],
  [29, 7470, 45, 7232],
  [17, 1699, 65, 1600],
  [186, 50448, 141, 27197],
  [5, 2493, 3, 2338],
  [27, 16886, 29, 17825],
].map(([ill, well, controlIll, controlWell]) => ({
  value: Math.log(ill / (ill + well) / (controlIll / (controlIll + controlWell))),
  variance: 1 / ill - 1 / (ill + well) + 1 / controlIll - 1 / (controlIll + controlWell),
}))

describe("a figure over groups", () => {
  it("is what is published of thirteen trials", () => {
    const { groups, mean, meanVariance, between } = randomEffects(trials)
    expect(groups).toBe(13)
    expect(mean).toBeCloseTo(-0.7145, 4)
    expect(Math.sqrt(meanVariance)).toBeCloseTo(0.1798, 4)
    expect(between).toBeCloseTo(0.3132, 4)
  })

  it("is, of groups known alike well, the mean, their variance with one degree lost, less the error", () => {
    // 1, 2 and 6: mean 3, squares 4 + 1 + 9 = 14, variance 7, of which 2 is error.
    const groups = [1, 2, 6].map((value) => ({ value, variance: 2 }))
    const { mean, between, meanVariance } = randomEffects(groups)
    expect(mean).toBeCloseTo(3, 12)
    expect(between).toBeCloseTo(5, 9)
    expect(meanVariance).toBeCloseTo(7 / 3, 9)
  })

  it("differs by nothing where errors explain it all, and where there is one group", () => {
    const alike = [1, 1.1, 0.9].map((value) => ({ value, variance: 2 }))
    expect(randomEffects(alike).between).toBe(0)
    expect(randomEffects([{ value: 3, variance: 2 }])).toEqual({
      groups: 1,
      mean: 3,
      meanVariance: 2,
      between: 0,
    })
  })
})

describe("units within their groups", () => {
  it("differ by their squares about each group's mean, less the error", () => {
    // Two pairs, each 4 apart: squares 8 and 8 for one degree each; 8 = within + 3.
    const pairs = [
      [0, 4],
      [10, 14],
    ].map((pair) => pair.map((value) => ({ value, variance: 3 })))
    expect(withinVariance(pairs)).toBeCloseTo(5, 9)
    expect(withinVariance([[{ value: 1, variance: 3 }], [{ value: 9, variance: 3 }]])).toBeNull()
  })
})
