import {
  type Effects,
  type Estimate,
  randomEffects,
  weighed,
  withinVariance,
} from "../statistics/randomEffects"

/** A figure over salons: its mean, how far salons differ, how far units within one do, and where a new one's may lie; variances. */
export type Nested = Effects & { within: number; ofNew: number }

/**
 * Heads or hands within salons: value = mean + salon + unit + error. How far units differ comes from those that share a
 * salon, or is `supposed` where none do; how far salons differ from their means (both in randomEffects.ts). A new unit in
 * a new salon differs by both, and by what is not known of the mean.
 */
export function nestedEffects(salons: readonly (readonly Estimate[])[], supposed: number): Nested {
  const within = withinVariance(salons) ?? supposed
  const means = salons.map((units): Estimate => {
    const { mean, weight } = weighed(units, within)
    return { value: mean, variance: 1 / weight }
  })
  const over = randomEffects(means)
  return { ...over, within, ofNew: over.between + over.meanVariance + within }
}
