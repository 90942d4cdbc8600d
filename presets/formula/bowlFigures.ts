import { assumption, commonPractice, figure } from "../figure/figure"

/** What mixing loses and how small and how large a bowl may be. Pot life where a sheet is silent is in pace.ts. */
export const bowlFigures = {
  /** Left in bowl and brush: 4 to 6 g and 5 % of what is wanted. Planned at the upper figure. */
  stayG: figure(6, [4, 6], commonPractice),
  stayShare: figure(0.05, [0.05, 0.05], commonPractice),
  /** The smallest sensible mix, 10 + 20 g. */
  leastLightenerG: figure(10, [10, 10], commonPractice),
  leastMixG: figure(30, [30, 30], commonPractice),
  /** 20 + 40 g at the generous end of a frame, in one bowl; 30 to 40 g serves 10 to 12 foils. */
  mostMixG: figure(60, [30, 60], commonPractice),
  mostFoils: figure(12, [10, 12], commonPractice),
  /** The smallest mix of toner: a tube or bottle is squeezed out, so that less is possible than of a powder. */
  leastTonerMixG: figure(15, [10, 30], assumption),
  /** What a salon scale shows, until the salon says what its own does. */
  scaleStepG: figure(1, [0.1, 5], assumption),
}

/** The steps that scales are sold with: kitchen scales 1, 2 or 5 g, finer ones less. Common practice, no source. */
export const scaleStepsG = [0.1, 0.5, 1, 2, 5] as const
