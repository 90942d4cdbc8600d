import { tradeFigures } from "../../../presets/formula/tradeFigures"
import type { GramsStart, StartFigures } from "../document/salon"
import { cholesky, type Matrix, solve } from "../statistics/matrix"
import type { Belief } from "../statistics/regression"
import { priorBelief } from "./calibration"

/** What is believed of a salon's grams before it has weighed anything: what other salons told, or the trade's figures. */
export const startBelief = (start: StartFigures | undefined): Belief =>
  start?.grams ? beliefOf(start.grams) : priorBelief(tradeFigures)

/** What a salon starts from as a belief. Its spreads are from salon to salon; by itself a weighing scatters as well. */
export function beliefOf(grams: GramsStart): Belief {
  const { lossG, soakGPerG, coatMgPerCm2, scatterShape, scatterShare } = grams
  const scale = (scatterShape - 1) * scatterShare ** 2
  const unit = scale / scatterShape
  return {
    mean: [lossG, soakGPerG, coatMgPerCm2].map(({ mid }) => mid),
    precision: inverse(covariance(grams)).map((row) => row.map((value) => unit * value)),
    shape: scatterShape,
    scale,
  }
}

/** The way back. */
export function gramsStart({ mean, precision, shape, scale }: Belief): GramsStart {
  const covariances = inverse(precision).map((row) => row.map((value) => (value * scale) / shape))
  const sd = covariances.map((row, j) => Math.sqrt(row[j]))
  const spread = (j: number) => ({ mid: mean[j], sd: sd[j] })
  const lean = (i: number, j: number) => covariances[i][j] / (sd[i] * sd[j])
  return {
    lossG: spread(0),
    soakGPerG: spread(1),
    coatMgPerCm2: spread(2),
    lossWithSoak: lean(0, 1),
    lossWithCoat: lean(0, 2),
    soakWithCoat: lean(1, 2),
    scatterShare: Math.sqrt(scale / (shape - 1)),
    scatterShape: shape,
  }
}

function covariance({
  lossG,
  soakGPerG,
  coatMgPerCm2,
  lossWithSoak,
  lossWithCoat,
  soakWithCoat,
}: GramsStart) {
  const sd = [lossG.sd, soakGPerG.sd, coatMgPerCm2.sd]
  const lean = [
    [1, lossWithSoak, lossWithCoat],
    [lossWithSoak, 1, soakWithCoat],
    [lossWithCoat, soakWithCoat, 1],
  ]
  return lean.map((row, i) => row.map((value, j) => value * sd[i] * sd[j]))
}

export function inverse(matrix: Matrix): Matrix {
  const lower = cholesky(matrix)
  return matrix.map((row, i) =>
    solve(
      lower,
      row.map((_, j) => (i === j ? 1 : 0)),
    ),
  )
}
