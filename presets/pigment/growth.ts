import { figure } from "../figure/figure"

/** How fast hair grows, mm a month. */
export const growthMmAMonth = figure(
  12,
  [10, 14],
  "0.85 to 1.25 cm between groups of people (Loussouarn 2005); about 1 cm, 0.6 to 1.4 in drug testing",
)

export const weeksAMonth = 30.44 / 7
export const mostWeeksOn = 20
