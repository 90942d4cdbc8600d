import { calibrationFigures } from "../../../presets/weighing/calibrationFigures"
import { learn, observationOf, type Weighing } from "../grams/calibration"
import { type Belief, othersOn } from "../statistics/regression"
import { studentBelow } from "../statistics/studentT"

/** A weighing that the others do not bear out: its place in the list, and the grams they expect of it. */
export type Doubt = { index: number; weighedG: number; expectedG: number }

/** The weighings so far from what all the others say that 1 in 100 would be. Each is judged without itself. */
export function doubtfulWeighings(prior: Belief, weighings: readonly Weighing[]): Doubt[] {
  const belief = learn(prior, weighings)
  return weighings.flatMap((weighing, index) => {
    const { centre, scale, df } = othersOn(belief, observationOf(weighing, prior))
    const chance = 2 * studentBelow(-Math.abs(weighing.productG - centre) / scale, df)
    return chance < calibrationFigures.doubtProbability
      ? [{ index, weighedG: weighing.productG, expectedG: Math.max(0, centre) }]
      : []
  })
}
