import { addOuter, determinant, inverse, type Matrix3, times } from "../surface/matrix3"
import { type Tape, tautMm, tautSlopes } from "../surface/tape"
import { add, dot, scale, subtract, type Vec3 } from "../surface/vec3"
import { caliperAxes, caliperSlopes } from "./caliperAxes"
import { headTapes, type TapeMm } from "./headMeasures"
import { caliperOf, spreadOf, vectorOf } from "./headPrior"
import type { HeadPrior, TapeFigures } from "./headSize"
import { headSurface } from "./headSurface"

/** A tape that does not go with the other two: by how much it reads more than they foretell, mm. */
export type TapeContradiction = { code: "tape-contradicts"; which: keyof TapeMm; byMm: number }

/** The head that three tapes over hair are most likely of, as factors on x, y and z; and how far each stands from the other two. */
export type TapeFit = {
  axes: Vec3
  strays: readonly { which: keyof TapeMm; byMm: number; standardDeviations: number }[]
}

const tapeNames = ["aroundMm", "overMm", "frontToNapeMm"] as const satisfies readonly (keyof TapeMm)[]

/**
 * Length, breadth and height of greatest probability given three tapes and what surveys tell of heads, mm (maximum a
 * posteriori; Gelman et al., Bayesian Data Analysis, ch. 4 for the weight of each survey by Laplace's approximation).
 * A tape that errs moves the head by no more than its own error makes likely. Null where the tapes are no lengths.
 */
export function fitTapes(tapes: TapeMm, { priors, tapeErrorMm }: TapeFigures): TapeFit | null {
  if (!tapeNames.every((name) => tapes[name] > 0 && Number.isFinite(tapes[name]))) return null
  const fits = priors.map((prior) => fitUnder(prior, tapes, tapeErrorMm))
  const best = fits.reduce((a, b) => (b.logWeight > a.logWeight ? b : a))
  const weights = fits.map(({ logWeight }) => Math.exp(logWeight - best.logWeight))
  const whole = weights.reduce((sum, weight) => sum + weight, 0)
  const caliper = fits.reduce<Vec3>(
    (sum, { caliper }, i) => add(sum, scale(caliper, weights[i] / whole)),
    [0, 0, 0],
  )
  const axes = caliperAxes(caliperOf(caliper))
  return axes.every(Number.isFinite) ? { axes, strays: best.strays } : null
}

type Fit = { caliper: Vec3; logWeight: number; strays: TapeFit["strays"] }

/** Steps of Gauss and Newton; lengths grow so evenly with the measures that three settle a micrometre. */
const steps = 6

function fitUnder(prior: HeadPrior, tapes: TapeMm, tapeErrorMm: TapeMm): Fit {
  const mean = vectorOf(prior.meanMm)
  const before = inverse(spreadOf(prior))
  let caliper = mean
  let rows = rowsAt(caliper, prior, tapes, tapeErrorMm)
  for (let step = 0; step < steps; step++) {
    const pull = rows.reduce(
      (sum, { slope, missMm, errorMm }) => add(sum, scale(slope, missMm / errorMm ** 2)),
      times(before, subtract(mean, caliper)),
    )
    caliper = add(caliper, times(inverse(precisionOf(before, rows)), pull))
    rows = rowsAt(caliper, prior, tapes, tapeErrorMm)
  }
  const after = precisionOf(before, rows)
  const moved = subtract(caliper, mean)
  const misfit = rows.reduce((sum, { missMm, errorMm }) => sum + (missMm / errorMm) ** 2, 0)
  const logWeight =
    -(misfit + dot(moved, times(before, moved)) + Math.log(determinant(after) / determinant(before))) / 2
  return { caliper, logWeight, strays: rows.map((row) => strayOf(row, inverse(after))) }
}

type Row = { which: keyof TapeMm; slope: Vec3; missMm: number; errorMm: number }

/** What each tape should read on a head, how that grows with its measures, and by how much it was read more. */
function rowsAt(caliper: Vec3, { hairUnderTape }: HeadPrior, tapes: TapeMm, tapeErrorMm: TapeMm): Row[] {
  const axes = caliperAxes(caliperOf(caliper))
  const grow = caliperSlopes(caliperOf(caliper))
  return tapeNames.map((which) => {
    const overHair = 1 + hairUnderTape[which]
    const taut = scale(tautSlopes(laid()[which], axes), overHair)
    return {
      which,
      slope: [dot(taut, grow[0]), dot(taut, grow[1]), dot(taut, grow[2])],
      missMm: tapes[which] - overHair * tautMm(laid()[which], axes),
      errorMm: tapeErrorMm[which],
    }
  })
}

const precisionOf = (before: Matrix3, rows: readonly Row[]) =>
  rows.reduce((sum, { slope, errorMm }) => addOuter(sum, slope, 1 / errorMm ** 2), before)

/** A tape against the other two and the survey: it is taken out again by its leverage, the share of the fit it makes itself. */
function strayOf({ which, slope, missMm, errorMm }: Row, spread: Matrix3) {
  const leverage = dot(slope, times(spread, slope)) / errorMm ** 2
  return {
    which,
    byMm: missMm / (1 - leverage),
    standardDeviations: Math.abs(missMm) / errorMm / Math.sqrt(1 - leverage),
  }
}

let onUnscaled: Record<keyof TapeMm, Tape> | null = null

/** The three tapes as they lie on the unscaled head. */
function laid(): Record<keyof TapeMm, Tape> {
  onUnscaled ??= headTapes(headSurface([1, 1, 1]))
  return onUnscaled
}
