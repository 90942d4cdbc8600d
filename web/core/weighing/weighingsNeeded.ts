import type { ProductNeed } from "../../../geometry/hair/product"
import { calibrationFigures } from "../../../presets/weighing/calibrationFigures"
import { factorsOf, learn, usualNeedOf, type Weighing, weightOf } from "../grams/calibration"
import { addOuter, cholesky, dot, inverseForm, type Vector } from "../statistics/matrix"
import type { Belief } from "../statistics/regression"
import { studentQuantile } from "../statistics/studentT"

/** How far the middle figure may be out, as a share of it, and how many more weighings like these bring it within reach. */
export type Trust = { withinShare: number; more: number | null }

const { trust, usualNeed, mostWeighings } = calibrationFigures

/**
 * How trustworthy the middle figure is for the mean of what was weighed, and how many more such weighings it
 * takes until it is within 15 % with a probability of 90 %. Null beyond 200.
 */
export function weighingsNeeded(prior: Belief, weighings: readonly Weighing[]): Trust {
  const needs: readonly ProductNeed[] = weighings.length > 0 ? weighings : [usualNeed]
  const belief = learn(prior, weighings)
  const usual = factorsOf(usualNeedOf(weighings))
  for (let more = 0; more <= mostWeighings; more++) {
    const share = withinShare(withMore(belief, prior, needs, more), usual)
    if (share <= trust.share) return { withinShare: withinShare(belief, usual), more }
  }
  return { withinShare: withinShare(belief, usual), more: null }
}

/** The belief as it would stand after `more` weighings, each telling as much as the usual one and surprising nobody. */
function withMore(belief: Belief, prior: Belief, needs: readonly ProductNeed[], more: number): Belief {
  const rows = needs.map((need) => ({
    x: factorsOf(need),
    weight: (weightOf(need, prior) * more) / needs.length,
  }))
  const shape = belief.shape + more / 2
  return {
    mean: belief.mean,
    precision: addOuter(belief.precision, rows),
    shape,
    scale: (belief.scale / belief.shape) * shape,
  }
}

function withinShare({ mean, precision, shape, scale }: Belief, x: Vector): number {
  const reach = studentQuantile((1 + trust.probability) / 2, 2 * shape)
  return (reach * Math.sqrt((scale / shape) * inverseForm(cholesky(precision), x))) / Math.abs(dot(x, mean))
}
