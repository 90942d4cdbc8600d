/** Assumptions behind learning grams from weighed bowls; no source. */
export const calibrationFigures = {
  /**
   * Scatter of a weighing about its expected grams, as a share of them. Hairs a cm2 (200 +- 50 between people) and
   * fibre are chosen from three words each, which leaves each known to about 15 %; the hand that spreads adds 10 %.
   * The error is the same for all foils of a head, so scatter grows in step with grams, not with their root.
   */
  relativeScatter: 0.18,
  /** How firmly that share is believed, in the shape of an inverse gamma; 2-3 is loose. */
  scatterShape: 3,
  /** Two readings of a scale that shows whole grams blur their difference by 0.4 g, as much as a foil of 2 g scatters. */
  blurG: 2,
  /**
   * A figure is called trustworthy when its middle is within this share of the truth, with this probability, and not
   * before so many weighings: with fewer than about eight the range of the next one is told, not the middle.
   */
  trust: { share: 0.15, probability: 0.9, leastWeighings: 8 },
  /** A plan goes by what was weighed from so many weighings on: as many as there are figures to learn. */
  leastToLearnFrom: 3,
  /** A row is doubted when only 1 in 100 would stand so far from what the others say. */
  doubtProbability: 0.01,
  /** Probability of the ranges shown: 8 in 10. */
  rangeProbability: 0.8,
  /** What is weighed before anything was: a slice 7 cm by 5 mm of 30 cm medium hair, coated on both faces. */
  usualNeed: { panels: 1, hairG: 1.2, strandAreaCm2: 420 },
  /** Foils in the usual bowl: 30 to 40 g serve 10 to 12 (common practice, no source). */
  foilsInBowl: 10,
  /**
   * Bowls of every sort: few foils and many, each with a fine weave to a heavy slice of long hair, g, and a narrow to a
   * wide strand, cm2. Assumption.
   */
  bowls: [4, 8, 12].flatMap((panels) =>
    [0.2, 0.6, 1.2, 2].flatMap((hairG) =>
      [100, 250, 450].map((strandAreaCm2) => ({
        panels,
        hairG: panels * hairG,
        strandAreaCm2: panels * strandAreaCm2,
      })),
    ),
  ),
  /** More than any row of a salon's list can hold: a slip of the pen. */
  most: { foils: 500, hairG: 5_000, strandAreaCm2: 1_000_000, productG: 5_000 },
  /** Weighings beyond this are not asked for. */
  mostWeighings: 200,
}
