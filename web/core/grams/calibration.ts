import type { ProductNeed } from "../../../geometry/hair/product"
import type { Range, TradeFigures } from "../../../geometry/hair/tradeFigures"
import { calibrationFigures } from "../../../presets/weighing/calibrationFigures"
import { diagonal, dot, type Vector } from "../statistics/matrix"
import {
  type Belief,
  coefficient,
  type Observation,
  predicted,
  type StudentT,
  update,
} from "../statistics/regression"
import { studentQuantile } from "../statistics/studentT"

/**
 * Grams of product learnt from the salon's scale: loss in each foil + soak x hair + coat x strand area. The
 * starting figures are the prior; weighed foils or bowls narrow it.
 */
export type ProductFigures = Pick<TradeFigures, "lossG" | "soakGPerG" | "coatMgPerCm2">
export type Weighing = ProductNeed & { productG: number }

const { relativeScatter, scatterShape, blurG, rangeProbability } = calibrationFigures

/** The unknowns' factors: panels, g of hair, and 1000 cm2 of strand, since coat is in mg. */
export const factorsOf = ({ panels, hairG, strandAreaCm2 }: ProductNeed): Vector => [
  panels,
  hairG,
  strandAreaCm2 / 1000,
]

/**
 * The starting figures as a belief whose 80 % ranges are theirs (half widths, about the middle). Its scatter is
 * a share of the expected grams, so its unit is 1.
 */
export function priorBelief(figures: ProductFigures): Belief {
  const ranges = [figures.lossG, figures.soakGPerG, figures.coatMgPerCm2]
  const scale = (scatterShape - 1) * relativeScatter ** 2
  const reach = reachOf(2 * scatterShape)
  const precisionOf = ({ low, high }: Range) => (scale / scatterShape) * (reach / ((high - low) / 2)) ** 2
  return {
    mean: ranges.map(({ mid }) => mid),
    precision: diagonal(ranges.map(precisionOf)),
    shape: scatterShape,
    scale,
  }
}

/** A weighing as a row: it weighs less the more grams the starting figures expect, which no reading can change. */
export const observationOf = (weighing: Weighing, prior: Belief): Observation => ({
  x: factorsOf(weighing),
  y: weighing.productG,
  weight: weightOf(weighing, prior),
})

/** 1 / grams squared: how much a need's grams count against those of a 1 g one. */
export const weightOf = (need: ProductNeed, prior: Belief) =>
  1 / (dot(factorsOf(need), prior.mean) ** 2 + blurG ** 2)

export const learn = (prior: Belief, weighings: readonly Weighing[]): Belief =>
  update(
    prior,
    weighings.map((weighing) => observationOf(weighing, prior)),
  )

/** The figures as learnt, each with its 80 % range; none below 0, as grams are not. */
export const learntFigures = (belief: Belief): ProductFigures => ({
  lossG: rangeOf(coefficient(belief, 0)),
  soakGPerG: rangeOf(coefficient(belief, 1)),
  coatMgPerCm2: rangeOf(coefficient(belief, 2)),
})

/** Grams the next weighing of a need will show, 80 % range. */
export const gramsFor = (belief: Belief, need: ProductNeed, prior: Belief): Range =>
  rangeOf(predicted(belief, factorsOf(need), weightOf(need, prior)))

/** How far the next weighing of a need may lie from its middle, g, 8 times in 10. */
export function reachG(belief: Belief, need: ProductNeed, prior: Belief): number {
  const { scale, df } = predicted(belief, factorsOf(need), weightOf(need, prior))
  return reachOf(df) * scale
}

/** The need of the weighing in the middle: the mean of all, or the usual slice while there are none. */
export function usualNeedOf(weighings: readonly ProductNeed[]): ProductNeed {
  if (weighings.length === 0) return calibrationFigures.usualNeed
  const mean = (quantityOf: (need: ProductNeed) => number) =>
    weighings.reduce((sum, weighing) => sum + quantityOf(weighing), 0) / weighings.length
  return {
    panels: mean(({ panels }) => panels),
    hairG: mean(({ hairG }) => hairG),
    strandAreaCm2: mean(({ strandAreaCm2 }) => strandAreaCm2),
  }
}

/** One standard deviation of a weighing of a need about its expected grams. */
export const scatterG = ({ shape, scale }: Belief, need: ProductNeed, prior: Belief) =>
  Math.sqrt(scale / shape / weightOf(need, prior))

const reachOf = (df: number) => studentQuantile((1 + rangeProbability) / 2, df)

function rangeOf({ centre, scale, df }: StudentT): Range {
  const reach = reachOf(df) * scale
  return { low: Math.max(0, centre - reach), mid: Math.max(0, centre), high: Math.max(0, centre + reach) }
}
