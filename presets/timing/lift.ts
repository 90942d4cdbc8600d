import type { Range } from "../../geometry/hair/tradeFigures"

/**
 * Priors for lift against time. Nobody has published lightness against time for a powder lightener with a fitted
 * rate, so these are assumptions; a strand test narrows them. Each range is read as the middle two thirds of heads.
 */
export const liftPriors = {
  /** Minutes for half of the lift still to come, at the reference strength and warmth. Assumption, no source. */
  halfTimeMin: { low: 12, high: 20 },
  /** Minutes before lift begins to show. Assumption; granules dissolve before pigment fades (J Soc Cosmet Chem 1970;21:875). */
  lagMin: { low: 2, high: 5 },
  /**
   * Speed goes with strength to this power. Assumption: 1 for cotton in alkaline peroxide (Cellulose 2000;7:263),
   * about 0.9 from repeated bleaching of tresses at 3 and 9 %.
   */
  strengthPower: { low: 0.5, high: 1 },
  /** Activation energy, kJ/mol: 2.0 to 2.5 times as fast for 10 degrees. Assumption; cotton 71 (Cellulose 2000;7:263). */
  activationKJ: { low: 53, high: 71 },
}

/** What the half time is stated for. Assumption: 9 % developer at 1 : 2 is 6 % on the head, at the warmth of the scalp. */
export const liftReference = { onHeadPercent: 6, temperatureC: 32 }

/**
 * No lift is counted after this. Assumption, 45 to 50 minutes: the paste dries stiff within the hour
 * (J Cosmet Sci 2021;72:533) while wear of the hair goes on.
 */
export const liftStopMin = 45

/** No lift is worked out above this: persulfate alone speeds up about sixfold for 10 degrees (Kolthoff, Miller 1951). */
export const liftCeilingC = 40

/** The level scale of these sheets, 1 black to 10 lightest blonde (common practice, no source). */
export const levelScale = { darkest: 1, lightest: 10 }

/** How far two looks at one strand may differ, levels, one standard deviation. Assumption. */
export const levelSeenSd = 0.5

/** Levels are written down in halves, which blurs each look once more, evenly to a quarter either way. Assumption. */
export const levelWrittenStep = 0.5

/**
 * What a strand in one product tells of another, against what it tells of its own: half. Assumption: how fast hair takes
 * lightener is in part the hair's and in part the product's, and nobody has told them apart.
 */
export const otherProductShare = 0.5

/** Most rows a strand test is written down in. Assumption. */
export const strandTestRows = 6

/**
 * Hair at the hairline and fine hair lift first: the share of the rest's minutes in which they are expected ready. That
 * they are first is common practice (they go on last, and scalp-adjacent and fringe hair lighten faster); by how much
 * is an assumption, nobody has timed it. The middle leaves a frame of six foils, all of them at the hairline, within
 * the 1.5 to 2 hours of common practice; the high end is that of the rest, so that they are never planned later.
 */
export const liftsFirstShare: Range = { low: 0.7, mid: 0.9, high: 1 }
