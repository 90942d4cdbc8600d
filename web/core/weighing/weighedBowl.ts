/** A bowl, its brush and all, on the scale before the first foil and after the last. */
export type BowlOnScale = { beforeG: number; afterG: number }

/** Why two readings cannot be. */
export type ReadingProblem =
  | (BowlOnScale & { code: "not-read" })
  | (BowlOnScale & { code: "gained" })
  | (BowlOnScale & { code: "nothing-placed" })

/** Grams of product that left the bowl, or why the readings cannot be. */
export function placedFrom(
  read: BowlOnScale,
): { ok: true; productG: number } | { ok: false; problem: ReadingProblem } {
  const { beforeG, afterG } = read
  if (!(beforeG > 0 && afterG >= 0) || !Number.isFinite(beforeG)) return refused("not-read", read)
  if (afterG > beforeG) return refused("gained", read)
  if (afterG === beforeG) return refused("nothing-placed", read)
  return { ok: true, productG: Number((beforeG - afterG).toFixed(3)) }
}

const refused = (code: ReadingProblem["code"], { beforeG, afterG }: BowlOnScale) => ({
  ok: false as const,
  problem: { code, beforeG, afterG },
})
