import type { ProductNeed } from "../../../geometry/hair/product"
import type { Range } from "../../../geometry/hair/tradeFigures"
import { calibrationFigures } from "../../../presets/weighing/calibrationFigures"
import { addOuter, cholesky, diagonal, dot, solve, type Vector } from "../statistics/matrix"
import type { Belief } from "../statistics/regression"
import type { Weighing } from "./calibration"
import { factorsOf, learn, type ProductFigures, reachG, usualNeedOf } from "./calibration"

/**
 * The figures as learnt, with the ranges to plan by. A plan adds up its foils low to low and high to high, while what
 * the scale will show of a bowl scatters about the sum by a root of squares: so each figure's range is the one that,
 * added up, comes nearest to the range of the next weighing over bowls of every sort (least squares of its share), and
 * meets it for the usual bowl.
 */
export function figuresToPlanBy(prior: Belief, weighings: readonly Weighing[]): ProductFigures {
  const belief = learn(prior, weighings)
  const reachOf = (need: ProductNeed) => reachG(belief, need, prior)
  const usual = weighings.length > 0 ? usualNeedOf(weighings) : bowlOf(calibrationFigures.usualNeed)
  const reach = reachesMeeting(usual, reachOf)
  const range = (j: number): Range => {
    const mid = Math.max(0, belief.mean[j])
    return { low: Math.max(0, mid - reach[j]), mid, high: mid + reach[j] }
  }
  return { lossG: range(0), soakGPerG: range(1), coatMgPerCm2: range(2) }
}

function reachesMeeting(usual: ProductNeed, reachOf: (need: ProductNeed) => number): number[] {
  const reach = nearestReaches(
    calibrationFigures.bowls.map((need) => factorsOf(need).map((factor) => factor / reachOf(need))),
  )
  const share = reachOf(usual) / dot(reach, factorsOf(usual))
  return reach.map((each) => each * share)
}

/** Reaches of the three figures, none below 0: those that would be are left out, and the others found without them. */
function nearestReaches(rows: readonly Vector[]): number[] {
  const reaches = (used: readonly number[]): number[] => {
    const own = rows.map((row) => ({ x: used.map((j) => row[j]), weight: 1 }))
    const lower = cholesky(addOuter(diagonal(used.map(() => 0)), own))
    const found = solve(lower, sumOf(own.map(({ x }) => x)))
    const kept = used.filter((_, i) => found[i] >= 0)
    if (kept.length < used.length) return reaches(kept)
    return [0, 1, 2].map((j) => (used.includes(j) ? found[used.indexOf(j)] : 0))
  }
  return reaches([0, 1, 2])
}

const sumOf = ([first, ...rest]: readonly Vector[]): Vector =>
  rest.reduce((sum, row) => sum.map((value, j) => value + row[j]), first)

const bowlOf = ({ panels, hairG, strandAreaCm2 }: ProductNeed): ProductNeed => ({
  panels: panels * calibrationFigures.foilsInBowl,
  hairG: hairG * calibrationFigures.foilsInBowl,
  strandAreaCm2: strandAreaCm2 * calibrationFigures.foilsInBowl,
})
