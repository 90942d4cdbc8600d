import { assumption, commonPractice, figure } from "../figure/figure"

/** How far from the middle a side parting is worn, mm along the hairline: above the arch of the brow. */
export const usualOffCentreMm = figure(30, [15, 45], assumption)

/**
 * Hair that grows within so far of the hairline, mm, is hairline hair: finer, lifting first, over the thinnest skin.
 * Common practice, no source.
 */
export const hairlineHairMm = figure(10, [5, 15], commonPractice)
