import { assumption, commonPractice, figure } from "../figure/figure"

/**
 * How fast hair grows, mm a month. Group means run from 8 to 13 (Loussouarn 2005 and earlier counts), laboratories reckon
 * with 10 and allow 6 to 14: who grows slower than this has to be measured.
 */
export const growthMmPerMonth = figure(
  12,
  [10, 14],
  `${assumption} within about 10 mm a month, range 6 to 14 (convention of hair laboratories), and 8.5 to 12.5 (Loussouarn 2005)`,
)

/** New growth shorter than this, mm, is too short to be foiled without touching what is lightened. */
export const leastRegrowthMm = figure(10, [8, 15], commonPractice)
