import { describe, expect, it } from "vitest"
import { productG } from "../../../../geometry/hair/product"
import { tradeFigures } from "../../../../presets/formula/tradeFigures"
import { gramsFor, learn, priorBelief, usualNeedOf } from "../../../../web/core/grams/calibration"
import { figuresToPlanBy } from "../../../../web/core/grams/figuresToPlanBy"
import { learntOf, type NamedWeighing } from "../../../../web/core/weighing/learnt"

const prior = priorBelief(tradeFigures)

/** Bowls of a salon that uses 1.2 times what the starting figures expect, unlike in foils, hair and strand. */
const bowls = (count: number, product = "Powder", kind: NamedWeighing["kind"] = "slice"): NamedWeighing[] =>
  Array.from({ length: count }, (_, i) => {
    const need = {
      panels: 4 + (i % 5),
      hairG: 4 + ((3 * i) % 7),
      strandAreaCm2: 1500 + 400 * ((2 * i) % 5),
    }
    return { ...need, product, kind, productG: 1.2 * productG(need, tradeFigures).mid }
  })

describe("what the scale teaches", () => {
  it("is nothing before there are enough weighings", () => {
    expect(learntOf([])).toEqual([])
    expect(learntOf(bowls(1))).toEqual([])
  })

  it("plans a usual bowl with the range that its next weighing has", () => {
    const rows = bowls(9)
    const figures = { ...tradeFigures, ...figuresToPlanBy(prior, rows) }
    const usual = usualNeedOf(rows)
    const planned = productG(usual, figures)
    const next = gramsFor(learn(prior, rows), usual, prior)
    expect(planned.mid).toBeCloseTo(next.mid, 6)
    expect(planned.high).toBeCloseTo(next.high, 6)
    const before = productG(usual, tradeFigures)
    expect(planned.high - planned.low).toBeLessThan((before.high - before.low) / 2)
    expect(planned.mid).toBeCloseTo(1.2 * before.mid, 0)
  })

  it("is told of each product and kind where there is enough of it", () => {
    const rows = [
      ...bowls(12, "Powder", "slice"),
      ...bowls(12, "Clay", "backcomb"),
      ...bowls(1, "Rare", "weave"),
    ]
    const told = learntOf(rows).map(({ product, kind, weighings }) => [product, kind, weighings])
    expect(told).toContainEqual([null, null, 25])
    expect(told).toContainEqual(["Clay", null, 12])
    expect(told).toContainEqual([null, "slice", 12])
    expect(told).toContainEqual(["Powder", "slice", 12])
    expect(told.some(([product]) => product === "Rare")).toBe(false)
  })
})
