import { logGamma } from "./gamma"
import {
  add,
  addOuter,
  cholesky,
  diagonal,
  dot,
  inverseForm,
  logDeterminant,
  type Matrix,
  solve,
  subtract,
  times,
  type Vector,
} from "./matrix"

/**
 * Conjugate normal-inverse-gamma regression (Gelman et al., Bayesian Data Analysis, ch. 14; Bishop, Pattern
 * Recognition and Machine Learning, section 3.3). y = x'b + e with e ~ N(0, s2 / weight);
 * b | s2 ~ N(mean, s2 precision^-1); s2 ~ InverseGamma(shape, scale).
 */
export type Belief = { mean: Vector; precision: Matrix; shape: number; scale: number }
export type Observation = { x: Vector; y: number; weight: number }
export type StudentT = { centre: number; scale: number; df: number }

/** Knowing nothing: the update by data is then ordinary least squares. */
export const flatBelief = (size: number): Belief => ({
  mean: Array(size).fill(0),
  precision: diagonal(Array(size).fill(0)),
  shape: -size / 2,
  scale: 0,
})

/**
 * The belief after seeing rows. The textbook's y'y - m'Pm loses its digits to cancellation, so the same sums are
 * taken over residuals, and the solution is corrected once by what it leaves over.
 */
export function update(prior: Belief, rows: readonly Observation[]): Belief {
  if (rows.length === 0) return prior
  const precision = addOuter(prior.precision, rows)
  const lower = cholesky(precision)
  const correct = (mean: Vector) => add(mean, solve(lower, pull(prior, rows, mean)))
  const mean = correct(correct(prior.mean))
  const moved = subtract(mean, prior.mean)
  const misfit = rows.reduce((sum, row) => sum + row.weight * residual(row, mean) ** 2, 0)
  return {
    mean,
    precision,
    shape: prior.shape + rows.length / 2,
    scale: prior.scale + (misfit + dot(moved, times(prior.precision, moved))) / 2,
  }
}

/** The way the rows and the prior still pull at a mean; zero at the solution. */
function pull(prior: Belief, rows: readonly Observation[], mean: Vector): Vector {
  const fromPrior = times(prior.precision, subtract(prior.mean, mean))
  return fromPrior.map((value, j) =>
    rows.reduce((sum, row) => sum + row.weight * row.x[j] * residual(row, mean), value),
  )
}

const residual = ({ x, y }: Observation, mean: Vector) => y - dot(x, mean)

/** What x'b is believed to be: one coefficient when x picks it out, the mean of many weighings otherwise. */
export const believed = (belief: Belief, x: Vector): StudentT => spread(belief, x, 0)

/** What the next weighing at x will read, its own scatter included. */
export const predicted = (belief: Belief, x: Vector, weight: number): StudentT =>
  spread(belief, x, 1 / weight)

function spread({ mean, precision, shape, scale }: Belief, x: Vector, ownVariance: number): StudentT {
  const variance = (scale / shape) * (ownVariance + inverseForm(cholesky(precision), x))
  return { centre: dot(x, mean), scale: Math.sqrt(variance), df: 2 * shape }
}

/**
 * What all the other rows say of one that the belief holds: it is taken out again, by its leverage h, the share of
 * its own prediction that it makes itself.
 */
export function othersOn(belief: Belief, row: Observation): StudentT {
  const leverage = row.weight * inverseForm(cholesky(belief.precision), row.x)
  const gap = residual(row, belief.mean) / (1 - leverage)
  const shape = belief.shape - 0.5
  const scale = belief.scale - (row.weight * (1 - leverage) * gap ** 2) / 2
  return {
    centre: row.y - gap,
    scale: Math.sqrt(scale / shape / (row.weight * (1 - leverage))),
    df: 2 * shape,
  }
}

/** One coefficient by its place. */
export const coefficient = (belief: Belief, index: number): StudentT =>
  believed(
    belief,
    belief.mean.map((_, i) => (i === index ? 1 : 0)),
  )

/** Mean of the scatter's variance s2, when the shape is above 1. */
export const meanVariance = ({ shape, scale }: Belief) => scale / (shape - 1)

/** Log of the probability the prior gave to the rows; the prior must not be flat. */
export function logEvidence(prior: Belief, rows: readonly Observation[]): number {
  const posterior = update(prior, rows)
  const logWeights = rows.reduce((sum, { weight }) => sum + Math.log(weight), 0)
  const volume = logDeterminant(cholesky(prior.precision)) - logDeterminant(cholesky(posterior.precision))
  return (
    (logWeights - rows.length * Math.log(2 * Math.PI) + volume) / 2 +
    prior.shape * Math.log(prior.scale) -
    posterior.shape * Math.log(posterior.scale) +
    logGamma(posterior.shape) -
    logGamma(prior.shape)
  )
}
