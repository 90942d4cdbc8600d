/** Assumptions behind joining what several salons learnt; no source. */
export const joiningFigures = {
  /** With fewer salons nothing is joined: two say little of how far salons differ, and one would be read off by the other. */
  leastSalons: 3,
  /**
   * How well the trade's figures are known before anybody has weighed, standard deviations in e-foldings: the middles of
   * loss, soak and coat as their ranges say; how far salons differ; the scatter of a weighing; how firmly that is alike.
   */
  known: { mids: [0.26, 0.28, 0.31], spread: 1, scatter: 0.5, shape: 1.5 },
  /** Times the fit is made, each by the grams that the one before expects. */
  rounds: 3,
  /** What a strand's half time is weighed against before it is told apart from it again: two thirds of heads, minutes, wide. */
  wideHalfTimeMin: { low: 8, high: 30 },
  /** A strand that leaves more than this share of that variance has said nothing of its half time. */
  leastTold: 0.9,
  /** Least foils timed of one person and kind. */
  leastFoils: 3,
}
