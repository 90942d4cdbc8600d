import type { Mix } from "./schema"

/** Grams for the bowl. */
export type MixGrams = { lightenerG: number; developerG: number }

/** Whole grams to weigh for so much product: lightener up to the next gram, then developer by the ratio. */
export function mixGrams(productG: number, { lightener, developer }: Mix["ratio"]): MixGrams {
  const parts = lightener + developer
  // A sum of floats that is a whole number but for its last digits is no reason for another gram.
  const lightenerG = Math.ceil(((productG * lightener) / parts) * (1 - 1e-12))
  return { lightenerG, developerG: Math.round((lightenerG * developer) / lightener) }
}
