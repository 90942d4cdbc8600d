import { assumption } from "../figure/figure"

/** Units of the two pigments in a fibre. */
export type Melanin = { eumelanin: number; pheomelanin: number }

const published = `"Physically Based Rendering", 4th ed., section 9.9: about 8 in black, 1.3 in brown, 0.3 in blond hair`

/**
 * Eumelanin in hair as it grew, by level; between two rows along the logarithm. Which level each published figure stands
 * at is an assumption: at level 3, "dark brown", 1.3 gives what was measured of dark brown hair.
 */
export const naturalEumelanin: readonly { level: number; units: number; source: string }[] = [
  { level: 1, units: 8, source: `${published}; level by ${assumption}` },
  { level: 3, units: 1.3, source: `${published}; level by ${assumption}` },
  { level: 7, units: 0.3, source: `${published}; level by ${assumption}` },
  { level: 10, units: 0.06, source: `${assumption}: the lightest hair that grows` },
]

/**
 * What lightener leaves when hair is lifted to a level, level 1 first: the brown goes before the warm rest. Assumption,
 * fitted so that red, orange, yellow and pale yellow follow as the trade's table says (pigments.ts).
 */
export const leftByLightener: readonly Melanin[] = [
  { eumelanin: 6, pheomelanin: 8 },
  { eumelanin: 1.8, pheomelanin: 3 },
  { eumelanin: 0.68, pheomelanin: 1.55 },
  { eumelanin: 0.42, pheomelanin: 1.12 },
  { eumelanin: 0.26, pheomelanin: 0.82 },
  { eumelanin: 0.15, pheomelanin: 0.56 },
  { eumelanin: 0.08, pheomelanin: 0.38 },
  { eumelanin: 0.04, pheomelanin: 0.225 },
  { eumelanin: 0.017, pheomelanin: 0.125 },
  { eumelanin: 0.006, pheomelanin: 0.06 },
]

/** A white hair: next to nothing of either. Assumption. */
export const whiteHair: Melanin = { eumelanin: 0, pheomelanin: 0.006 }

/**
 * What a toner adds for each finish, as a share of what the complement of the pigment would have to take until nothing of
 * its hue was left. Warm is only glossed. Assumption, in the order of finishStrength (tones.ts).
 */
export const tonerShare = { cool: 0.14, neutral: 0.07, warm: 0.02 } as const

/** How far a picture may be out, either way. Assumption: as far as two colourists differ by eye. */
export const levelsEitherWay = 1

/** Levels of neighbouring strands differ by up to so much either way. Assumption. */
export const strandsDifferByLevels = 0.3

/** What a picture is drawn in while nobody has said. Assumption; the picture says so. */
export const levelsIfUnknown = { now: 5, aimed: 9 } as const
