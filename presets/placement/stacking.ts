import { assumption, commonPractice, figure } from "../figure/figure"

/** Hair left between two partings that follow each other, mm. */
export const usualGapMm = figure(3, [1, 10], commonPractice)

/** How many a stack begins with, and the most it can be asked for: the finest work lays about 40 in one direction. */
export const stackCount = figure(4, [1, 40], assumption)

/** A parting shorter than this, mm, is no foil: a stack ends before it. */
export const shortestStackedMm = figure(15, [10, 25], assumption)

/** Hair left on either side of a worn parting, mm, where a section would have crossed it. */
export const besideWornMm = figure(3, [2, 8], assumption)
