import { isFoil } from "../../../geometry/section/section"
import { type SectionNameCode, sectionNameOf } from "../document/sectionNameCode"
import type { Measured } from "./measured"

/** How much less the totals are than the rows together, grams of product, and by which pairs the hair is taken twice; `more` are not named. */
export type TakenTwiceCode = {
  lowG: number
  highG: number
  pairs: readonly (readonly [SectionNameCode, SectionNameCode])[]
  more: number
}

const mostNamed = 3

/** Null when no foil takes hair that another has taken. */
export function takenTwiceOf({ overlaps, takenTwice: { productG } }: Measured): TakenTwiceCode | null {
  const counted = overlaps.filter(({ later }) => isFoil(later))
  if (counted.length === 0) return null
  const pairs = counted
    .slice(0, mostNamed)
    .map(({ earlier, later }) => [sectionNameOf(earlier), sectionNameOf(later)] as const)
  return { lowG: productG.low, highG: productG.high, pairs, more: counted.length - pairs.length }
}
