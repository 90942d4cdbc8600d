import { tradeFigures } from "../../../presets/formula/tradeFigures"
import { joiningFigures } from "../../../presets/weighing/joiningFigures"
import { observationOf, priorBelief, type Weighing } from "../grams/calibration"
import { inverse } from "../grams/startBelief"
import { logGamma } from "../statistics/gamma"
import { leastBySimplex } from "../statistics/leastBySimplex"
import {
  add,
  addOuter,
  cholesky,
  diagonal,
  dot,
  logDeterminant,
  type Matrix,
  solve,
  times,
  type Vector,
} from "../statistics/matrix"
import type { Belief } from "../statistics/regression"

/**
 * What the weighings of several salons tell of a new one. Each salon i has figures of its own, b_i, and a scatter of its
 * own, s2_i: y = x'b_i + e, e ~ N(0, s2_i / weight); b_i | s2_i ~ N(m, s2_i P^-1); s2_i ~ InverseGamma(shape, scale).
 * Integrated over b_i and s2_i each salon's rows have the evidence of regression.ts; m, P (the figures apart from each
 * other), shape and scale are those that make all evidence together greatest (empirical Bayes, type II maximum likelihood:
 * Efron, Morris, J Am Stat Assoc 1975;70:311; Gelman et al., Bayesian Data Analysis, ch. 5 and 15). Each is drawn toward
 * the trade's figure as if that were known to so many e-foldings, which keeps a few salons from looking alike by luck.
 * What is then not known of m itself is added to the spread between salons (Laird, Ware, Biometrics 1982;38:963).
 */
export function joinGrams(salons: readonly (readonly Weighing[])[]): Belief {
  const trade = priorBelief(tradeFigures)
  let found: Vector = Array(8).fill(0)
  let joined = trade
  // A weighing counts by the grams expected of it, so the fit is made again with those that it leads to itself.
  for (let round = 0; round < joiningFigures.rounds; round++) {
    const sums = salons.map((rows) => sumsOf(rows, joined))
    const centre = joined.mean
    const cost = (at: Vector) => {
      const belief = beliefAt(at, trade)
      const likelihood = sums.reduce((sum, each) => sum + evidence(each, belief, centre), 0)
      return penalty(at) - likelihood
    }
    found = leastBySimplex(cost, found, 0.3)
    joined = beliefAt(found, trade)
  }
  return widened(
    joined,
    salons.map((rows) => sumsOf(rows, joined).information),
  )
}

/** How far salons differ in each figure, as shares of its middle, standard deviations. */
export const salonSpread = ({ mean, precision, scale, shape }: Belief): number[] =>
  inverse(precision).map((row, j) => Math.sqrt((row[j] * scale) / shape) / mean[j])

/** The sums of a salon's rows that its evidence needs; products are less what a middle expects, so that no digits are lost. */
type Sums = { rows: number; information: Matrix; pull: Vector; squares: number; logWeights: number }

function sumsOf(rows: readonly Weighing[], joined: Belief): Sums {
  const seen = rows
    .map((row) => observationOf(row, joined))
    .map((row) => ({ ...row, y: row.y - dot(row.x, joined.mean) }))
  return {
    rows: rows.length,
    information: addOuter(diagonal([0, 0, 0]), seen),
    pull: [0, 1, 2].map((j) => seen.reduce((sum, { x, y, weight }) => sum + weight * x[j] * y, 0)),
    squares: seen.reduce((sum, { y, weight }) => sum + weight * y * y, 0),
    logWeights: seen.reduce((sum, { weight }) => sum + Math.log(weight), 0),
  }
}

/** As `logEvidence` of regression.ts, from sums; the middle is told from `centre`. */
function evidence(sums: Sums, { mean, precision, shape, scale }: Belief, centre: Vector): number {
  const apart = mean.map((value, j) => value - centre[j])
  const after = precision.map((row, i) => add(row, sums.information[i]))
  const lower = cholesky(after)
  const right = add(times(precision, apart), sums.pull)
  const misfit = sums.squares + dot(apart, times(precision, apart)) - dot(right, solve(lower, right))
  const ends = { shape: shape + sums.rows / 2, scale: scale + Math.max(0, misfit) / 2 }
  return (
    (sums.logWeights - sums.rows * Math.log(2 * Math.PI)) / 2 +
    (logDeterminant(cholesky(precision)) - logDeterminant(lower)) / 2 +
    shape * Math.log(scale) -
    ends.shape * Math.log(ends.scale) +
    logGamma(ends.shape) -
    logGamma(shape)
  )
}

/** Eight unknowns, all 0 at the trade's figures: e-foldings of three middles, three spreads, the scatter, and the shape. */
function beliefAt(at: Vector, trade: Belief): Belief {
  const shape = 2 + (trade.shape - 2) * Math.exp(at[7])
  const share = Math.sqrt(trade.scale / (trade.shape - 1)) * Math.exp(at[6])
  const scale = (shape - 1) * share ** 2
  const unit = scale / shape / (trade.scale / trade.shape)
  return {
    mean: trade.mean.map((mid, j) => mid * Math.exp(at[j])),
    precision: diagonal(trade.precision.map((row, j) => row[j] * unit * Math.exp(-2 * (at[j] + at[3 + j])))),
    shape,
    scale,
  }
}

const { known } = joiningFigures
const widths = [...known.mids, known.spread, known.spread, known.spread, known.scatter, known.shape]
const penalty = (at: Vector) => at.reduce((sum, value, j) => sum + (value / widths[j]) ** 2 / 2, 0)

/** The spread between salons and what is not known of their middle, together. */
function widened(joined: Belief, informations: readonly Matrix[]): Belief {
  const { precision, mean, scale, shape } = joined
  const unit = scale / shape
  let ofMiddle: Matrix = diagonal(mean.map((mid, j) => unit / (mid * known.mids[j]) ** 2))
  for (const information of informations) {
    const after = inverse(precision.map((row, i) => add(row, information[i])))
    const told = precision.map((row, i) =>
      row.map((value, j) => value - precision[i][i] * after[i][j] * precision[j][j]),
    )
    ofMiddle = ofMiddle.map((row, i) => add(row, told[i]))
  }
  const [between, middle] = [inverse(precision), inverse(ofMiddle)]
  return { ...joined, precision: inverse(between.map((row, i) => add(row, middle[i]))) }
}
