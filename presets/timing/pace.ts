import type { Range } from "../../geometry/hair/tradeFigures"
import type { FoilKind } from "../../geometry/section/section"

const spread = (low: number, mid: number, high: number): Range => ({ low, mid, high })

/** Minutes a foil: 1-1.5 expert, 1.5-2.5 usual, 3-5 learner. Common practice, no source. */
export type Skill = "expert" | "usual" | "learner"
export const foilMin: Record<Skill, Range> = {
  expert: spread(1, 1.25, 1.5),
  usual: spread(1.5, 2, 2.5),
  learner: spread(3, 4, 5),
}

/**
 * Minutes more for a kind: a backcomb takes half a minute to a minute more. Common practice, no source. A painted panel
 * is neither folded nor wrapped, but laid flat and feathered: a minute to three more. Assumption.
 */
export const extraMin: Record<FoilKind, Range> = {
  slice: spread(0, 0, 0),
  weave: spread(0, 0, 0),
  backcomb: spread(0.5, 0.75, 1),
  painted: spread(1, 2, 3),
}

/** Minutes more for a second mix on the same foil: another bowl, another brush, and a clean line between. Assumption. */
export const secondMixMin = spread(0.5, 0.75, 1.5)

/** Minutes a foil whose roots are coated later: opening it, the coat, closing it again. Assumption. */
export const rootsLaterMin = spread(0.75, 1.25, 2.5)

/** What the start of a recorded pace weighs, in foils. Assumption. */
export const paceWeightFoils = 6

/** Two taps in one breath, or a pause for lunch, say nothing of how long a foil takes. Assumption. */
export const timedFoilMin = { low: 0.2, high: 15 }

/** Minutes round the foils. Assumptions, save where common practice is named. */
export const roundTheFoils = {
  /** The first parting and the first bowl. */
  preparingMin: spread(3, 4, 6),
  /** None: the pace of common practice counts from foil to foil, with the next parting and the next bowl in it. */
  partingMin: spread(0, 0, 0),
  mixingMin: spread(0, 0, 0),
  /** Opening one foil and wiping the product off. */
  wipingMin: spread(0.25, 0.5, 1),
  /** Once for a head with backcombing: wet, with conditioner, from the ends up, 5-15 minutes (common practice). */
  detanglingMin: spread(5, 10, 15),
  rinsingMin: spread(5, 8, 12),
  /** Putting a toner on and rinsing it, beside the minutes it is left. */
  tonerInAndOutMin: spread(4, 5, 6),
  dryingMin: spread(20, 30, 45),
}

/**
 * Minutes on until ready where no goal is set. From common practice: with 45 minutes and 1.5 minutes a foil, 13 foils
 * fit one rinse and 14 do not (27 and 25.5 minutes left), in slow hair 8 (34.5). The low end is an assumption.
 */
export const readyWithoutGoalMin = spread(18, 26, 34)

/** Longest time where the sheet is silent: 30-35 minutes. Common practice, no source. */
export const longestWithoutSheetMin = 35

/** First look at 5 minutes on fine, porous or lightened hair, else 10; then every 5. Common practice, no source. */
export const looks = { firstMin: 10, firstDelicateMin: 5, everyMin: 5 }

/** Where the sheet is silent: a bowl is best within 20-30 minutes, thrown away at 45-60. Common practice, no source. */
export const bowl = { potLifeMin: 45 }

/**
 * Heat: at most 10 minutes, never with 30 volume and up. Common practice, no source. Cooling is an assumption, and so is
 * the warmth of foils under low to medium heat: nobody has measured it on a head.
 */
export const heatHabits = { mostMin: 10, forbiddenVolume: 30, coolingMin: 3, warmthC: { low: 34, high: 40 } }

/** The hairline is ahead when it would be ready more than one look before the back. Assumption. */
export const aheadMin = looks.everyMin

/** The longest that a chair is booked for, as the field of it. Assumption. */
export const mostBookedMin = 600

/** What a cure costs, in minutes of chair time, so that cures can be ranked. Assumptions. */
export const fixCosts = {
  /** Watching and taking off foils one by one, where one rinse was wanted. */
  eachOff: 5,
  reorder: 1,
  extraBowl: 3,
  /** Someone has to be free; each minute of theirs counts as much as one of the chair. */
  secondHands: 20,
  secondHandsPerMin: 1,
  /** The client goes home with damp hair. */
  noDrying: 15,
  /** The appointment ends later, besides the minutes it is longer by: someone has to ask. */
  laterEnd: 10,
  foilLeftOut: 40,
  anotherVisit: 90,
}
