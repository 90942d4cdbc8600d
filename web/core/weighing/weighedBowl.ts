import { numberText } from "../text/numberText"

/** A bowl, its brush and all, on the scale before the first foil and after the last. */
export type BowlOnScale = { beforeG: number; afterG: number }

/** Grams of product that left the bowl, or the sentence that says why the readings cannot be. */
export function placedFrom({
  beforeG,
  afterG,
}: BowlOnScale): { ok: true; productG: number } | { ok: false; problem: string } {
  const said = `${numberText(beforeG, 1)} g before and ${numberText(afterG, 1)} g after`
  if (!(beforeG > 0 && afterG >= 0) || !Number.isFinite(beforeG))
    return { ok: false, problem: `${said}: give both readings in grams, with the same bowl and brush.` }
  if (afterG > beforeG)
    return { ok: false, problem: `${said}: the bowl cannot gain; were the two readings exchanged?` }
  if (afterG === beforeG) return { ok: false, problem: `${said}: nothing was placed; leave this bowl out.` }
  return { ok: true, productG: Number((beforeG - afterG).toFixed(3)) }
}
