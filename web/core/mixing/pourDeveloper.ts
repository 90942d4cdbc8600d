import { type Blend, blend, bottlesFor } from "./blend"
import { labelPercent } from "./strength"

/**
 * Grams of two bottles of the shelf for a developer that does not stand on it, by mass. Null where it does, or where
 * nobody has said what stands there.
 */
export function pourDeveloper(volume: number, bottles: readonly number[], grams: number): Blend | null {
  if (bottles.length === 0 || bottles.includes(volume)) return null
  const shelf = bottles.map(labelPercent)
  const want = labelPercent(volume)
  return blend(bottlesFor(shelf, want) ?? shelf, want, grams)
}
