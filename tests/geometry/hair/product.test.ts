import { describe, expect, it } from "vitest"
import { addRanges, productG } from "../../../geometry/hair/product"
import { tradeFigures } from "../../../presets/formula/tradeFigures"

const figures = {
  ...tradeFigures,
  lossG: { low: 0.1, mid: 0.2, high: 0.3 },
  soakGPerG: { low: 1, mid: 2, high: 3 },
  coatMgPerCm2: { low: 2, mid: 4, high: 7 },
}

describe("grams of product", () => {
  it("are loss, soak and coat at each level", () => {
    const { low, mid, high } = productG({ panels: 2, hairG: 1.5, strandAreaCm2: 500 }, figures)
    expect(low).toBeCloseTo(0.2 + 1.5 + 1, 12)
    expect(mid).toBeCloseTo(0.4 + 3 + 2, 12)
    expect(high).toBeCloseTo(0.6 + 4.5 + 3.5, 12)
  })

  it("of parts add up to those of the whole", () => {
    const parts = [
      { panels: 1, hairG: 0.7, strandAreaCm2: 211 },
      { panels: 3, hairG: 2.2, strandAreaCm2: 89 },
    ].map((need) => productG(need, figures))
    const whole = productG({ panels: 4, hairG: 2.9, strandAreaCm2: 300 }, figures)
    const sum = addRanges(parts)
    for (const level of ["low", "mid", "high"] as const) expect(sum[level]).toBeCloseTo(whole[level], 12)
  })

  it("of nothing are none", () => {
    expect(productG({ panels: 0, hairG: 0, strandAreaCm2: 0 }, figures)).toEqual({ low: 0, mid: 0, high: 0 })
    expect(addRanges([])).toEqual({ low: 0, mid: 0, high: 0 })
  })
})
