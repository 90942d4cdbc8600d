import { commonPractice, figure } from "../figure/figure"

/** A developer as the trade names it. The pair is fixed; the per cent is the label's and is taken as % w/w. */
export type Developer = { volume: number; percent: number }

/** Common practice, no source: 10 / 20 / 30 / 40 volume are sold as 3 / 6 / 9 / 12 %. */
export const tradePairs: readonly Developer[] = [
  { volume: 10, percent: 3 },
  { volume: 20, percent: 6 },
  { volume: 30, percent: 9 },
  { volume: 40, percent: 12 },
]

/** Common practice, no source: the label's per cent is 0.3 of its volume (exact strength differs by up to 3 %). */
export const labelPercentPerVolume = 0.3

/** Weeks between two visits that lift the same hair, and only once the hair has been checked. Common practice, no source. */
export const visitWeeks = figure(8, [4, 12], commonPractice)

/** Common practice, no source: how strong a developer is chosen before anyone asks. 40 volume never is. */
export const developerHabits = { usualVolume: 20, ceilingVolume: 30, hairlineCeilingVolume: 20 }

/**
 * Most hydrogen peroxide a ready-for-use hair product may hold, present or released: 12 % (40 volumes).
 * Regulation (EC) 1223/2009, Annex III, entry 12(a), as replaced by Regulation (EU) 2019/831.
 */
export const legalLimitPercent = 12

/**
 * Density of hydrogen peroxide in water at 20 C, g/mL, against % w/w. Chemical handbook values, good to
 * +-0.001. Cream developers are mostly water too and lie within a few per cent of these.
 */
export const peroxideDensities: readonly { percentWw: number; gPerMl: number }[] = [
  { percentWw: 0, gPerMl: 0.9982 },
  { percentWw: 3, gPerMl: 1.0095 },
  { percentWw: 6, gPerMl: 1.0204 },
  { percentWw: 9, gPerMl: 1.0314 },
  { percentWw: 12, gPerMl: 1.0425 },
  { percentWw: 27, gPerMl: 1.1 },
  { percentWw: 30, gPerMl: 1.112 },
  { percentWw: 35, gPerMl: 1.133 },
]
