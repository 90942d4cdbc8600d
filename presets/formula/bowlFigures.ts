import { assumption, commonPractice, figure } from "../figure/figure"

/** What mixing loses and how small and how large a bowl may be. Pot life where a sheet is silent is in pace.ts. */
export const bowlFigures = {
  /** Left in bowl and brush: 4 to 6 g and 5 % of what is wanted. Planned at the upper figure. */
  stayG: figure(6, [4, 6], commonPractice),
  stayShare: figure(0.05, [0.05, 0.05], commonPractice),
  /** The smallest sensible mix, 10 + 20 g. */
  leastLightenerG: figure(10, [10, 10], commonPractice),
  leastMixG: figure(30, [30, 30], commonPractice),
  /** A bowl of 30 to 40 g serves 10 to 12 foils. */
  mostMixG: figure(40, [30, 40], commonPractice),
  mostFoils: figure(12, [10, 12], commonPractice),
  /** What a salon scale shows, until the salon says what its own does. */
  scaleStepG: figure(1, [0.1, 5], assumption),
}

/** The steps that scales are sold with: kitchen scales 1, 2 or 5 g, finer ones less. Common practice, no source. */
export const scaleStepsG = [0.1, 0.5, 1, 2, 5] as const
