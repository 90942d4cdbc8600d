/** How a finish is toned, and for how long. Minutes: 5 to 20, common practice, no source. The rest assumptions. */
export const toneMinutes = {
  usual: { low: 5, mid: 10, high: 20 },
  /** Porous hair takes tone fast: looked at first, taken off first. */
  porous: { low: 5, mid: 7, high: 10 },
}

/** How much of the neutralising tone a finish takes: half is diluted with clear; warm keeps its pigment and is only glossed. */
export const finishStrength = { cool: "full", neutral: "half", warm: "sheer" } as const
/** Parts of clear in the toner of each strength, 1 in all. Common practice, no source: half strength is half clear. */
export const clearShare = { full: 0, half: 0.5, sheer: 0 } satisfies Record<ToneStrength, number>
export type ToneStrength = (typeof finishStrength)[keyof typeof finishStrength]

/**
 * Grams of mixed toner to a gram of hair: tresses are treated with as much liquid as hair and up to four times as much
 * (1 : 1 in J Cosmet Sci 2004;55:554; 2 : 1 and 4 : 1 usual in protocols). For a head, an assumption.
 */
export const tonerGPerG = { low: 1, mid: 2, high: 4 }

/** Parts of developer to one of toner where its sheet leaves the choice. Assumption. */
export const usualTonerParts = 2

/** How far a root melt is drawn down past the root. */
export const dragDownMm = { low: 10, mid: 25, high: 50 }
