import { liftPriors, liftReference } from "../../../presets/timing/lift"
import { joiningFigures } from "../../../presets/weighing/joiningFigures"
import type { LiftTraits } from "../lift/lift"
import { priorTraits, type Weighted } from "../lift/liftGrid"
import { narrowLift } from "../lift/strandTest"
import type { Estimate } from "../statistics/randomEffects"
import type { LearnRow } from "./learnRow"
import { type Nested, nestedEffects } from "./nestedEffects"
import { type StrandRows, strandsOf } from "./strandRows"

/** Half times over salons: minutes within which two thirds of the heads of a new salon lie. */
export type JoinedHalfTime = Nested & { strands: number; halfTimeMin: { low: number; high: number } }

/**
 * Half times by ratio, heads within salons (nestedEffects). Each strand is weighed against a wide spread of half times
 * with every other trait as it is supposed; what the strand itself says is what that spread and the outcome differ by, as
 * of two normal ones (precisions and weighted means subtract). Null where too few salons tell of any.
 */
export function joinHalfTimes(salons: readonly (readonly LearnRow[])[]): JoinedHalfTime | null {
  const told = salons.map((rows) => strandsOf(rows).flatMap(estimateOf)).filter(({ length }) => length > 0)
  if (told.length < joiningFigures.leastSalons) return null
  const { low, high } = liftPriors.halfTimeMin
  const joined = nestedEffects(told, (Math.log(high / low) / 2) ** 2)
  const reach = Math.sqrt(joined.ofNew)
  return {
    ...joined,
    strands: told.flat().length,
    halfTimeMin: { low: Math.exp(joined.mean - reach), high: Math.exp(joined.mean + reach) },
  }
}

function estimateOf({ first, looks }: StrandRows): Estimate[] {
  const { printedLowLevels, printedHighLevels, onHeadPercent, longestMin, startLevel } = first
  const printed = { low: printedLowLevels, high: printedHighLevels }
  const wide = priorTraits(printed, joiningFigures.wideHalfTimeMin)
  const conditions = { onHeadPercent, longestMin, printed, temperatureC: liftReference.temperatureC }
  const narrowed = narrowLift(wide, { rows: looks, startLevel, conditions })
  if ("refused" in narrowed) return []
  const [before, after] = [momentsOf(wide), momentsOf(narrowed.traits)]
  if (after.variance > joiningFigures.leastTold * before.variance) return []
  const precision = 1 / after.variance - 1 / before.variance
  return [
    {
      value: (after.value / after.variance - before.value / before.variance) / precision,
      variance: 1 / precision,
    },
  ]
}

function momentsOf(traits: readonly Weighted<LiftTraits>[]): Estimate {
  const mean = (of: (log: number) => number) =>
    traits.reduce((sum, { of: { halfTimeMin }, weight }) => sum + weight * of(Math.log(halfTimeMin)), 0)
  const value = mean((log) => log)
  return { value, variance: mean((log) => (log - value) ** 2) }
}
