import { type BowlFoil, placedInTurn } from "../../web/core/mixing/bowls"
import type { Recipe } from "../../web/core/mixing/mixAmounts"

/** One part of lightener to two of 20 volumes, weighed to the gram. */
export const recipe: Recipe = {
  ratio: { lightener: 1, developer: 2 },
  developerPercent: 6,
  additives: [],
  scaleStepG: 1,
}

/** So many foils alike, placed one after the other: grams each at the upper figure, minutes to place one. */
export const bowlFoils = (count: number, high: number, placeMin: number): BowlFoil[] =>
  placedInTurn(
    Array.from({ length: count }, (_, i) => ({
      id: `f${i + 1}`,
      productG: { low: high / 2, mid: high * 0.75, high },
      placeMin,
    })),
  )
