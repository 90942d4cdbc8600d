import { assumption, figure } from "../figure/figure"

/** How far from the middle a side parting is worn, mm along the hairline: above the arch of the brow. */
export const usualOffCentreMm = figure(30, [15, 45], assumption)
