import { assumption, commonPractice, type Figure, figure } from "../figure/figure"

/** Foil sheets as sold, width and length in mm (5 inch wide, 8, 10 and 12 long, and the narrow sheet). Common practice, no source. */
export const foilSizes = [
  { name: "short", widthMm: 127, lengthMm: 203 },
  { name: "medium", widthMm: 127, lengthMm: 254 },
  { name: "long", widthMm: 127, lengthMm: 305 },
  { name: "narrow", widthMm: 100, lengthMm: 300 },
] as const
export const usualFoil = foilSizes[2]

/** How deep a slice is parted, mm; over `sliceWarningMm` the inside of a solid slice stays dark. */
export const sliceDepthMm = {
  micro: figure(1.5, [1, 2], commonPractice),
  fine: figure(3, [2, 4], commonPractice),
  standard: figure(5, [5, 6], commonPractice),
  heavy: figure(9, [8, 12], commonPractice),
}
export const sliceWarningMm = figure(6, [5, 6], commonPractice)

/** How deep a weave and a backcombed section are parted, mm. */
export const weaveDepthMm = figure(6, [5, 8], commonPractice)
export const backcombDepthMm = figure(12, [10, 20], commonPractice)

/** Stitches: width, the gap between, and how deep the tail dips, mm. Fine takes 40 % of the parting, medium and chunky half or more. */
export const stitches = {
  fine: {
    stitchMm: figure(2, [1, 2], commonPractice),
    gapMm: figure(3, [2, 4], assumption),
    dipMm: figure(5, [3, 8], assumption),
  },
  medium: {
    stitchMm: figure(4, [3, 5], commonPractice),
    gapMm: figure(4, [3, 6], assumption),
    dipMm: figure(6, [4, 8], assumption),
  },
  chunky: {
    stitchMm: figure(8, [6, 10], commonPractice),
    gapMm: figure(6, [5, 10], assumption),
    dipMm: figure(8, [5, 10], assumption),
  },
}

/** Where product begins, mm from the scalp. Regrowth only begins as near as tight does; it ends sooner. */
export const rootDistanceMm = {
  tight: figure(3, [3, 6], commonPractice),
  standard: figure(6, [5, 10], commonPractice),
  soft: figure(20, [10, 40], assumption),
  regrowth: figure(3, [3, 6], commonPractice),
}

/**
 * Where roots in a mix of their own end, mm from the scalp: as far as its warmth lifts hair faster, half an inch to an
 * inch and a half.
 */
export const rootsToMm = figure(25, [13, 38], commonPractice)

/** How far new growth reaches after ten weeks, mm: 367 micrometres a day (Loussouarn 2005). */
export const regrowthMm = figure(
  26,
  [20, 29],
  "Loussouarn 2005: 280, 367 and 411 micrometres a day for 70 days",
)

/** A backcombed section: the share of the hair pushed to the root, and the height of the cushion it makes, mm. */
export const backcombing = {
  pushedShare: figure(0.5, [0.3, 0.6], commonPractice),
  cushionMm: figure(30, [20, 50], commonPractice),
} satisfies Record<string, Figure>

export type DepthWord = keyof typeof sliceDepthMm
export type StitchWord = keyof typeof stitches
export const stitchWords = Object.keys(stitches) as readonly StitchWord[]
export type RootWord = keyof typeof rootDistanceMm
