import type { Range } from "../../../geometry/hair/tradeFigures"
import type { Foil } from "../../../geometry/section/section"
import { fibreUm } from "../../../presets/client/hairTypes"
import { liftsFirstShare } from "../../../presets/timing/lift"
import type { Plan } from "../document/schema"
import { takesAtHairline } from "../figures/hairAtHairline"
import { headOf } from "../figures/measured"

/** Why a foil's hair is expected to lift before the rest; a client whose hair is fine all over has no rest. */
export type LiftsFirst = "hairline" | "fine"

/**
 * A strand that was looked at is hair of this head: what was seen of it is in place of what is expected of fine hair.
 * It is taken where it does not show, so that of the hairline it says nothing.
 */
export function liftsFirst(foil: Foil, plan: Plan, isStrandSeen: boolean): LiftsFirst | null {
  if (takesAtHairline(foil, headOf(plan))) return "hairline"
  return isFine(plan) && !isStrandSeen ? "fine" : null
}

export const isFine = ({ hair }: Pick<Plan, "hair">) => hair.fibreUm <= fibreUm.fine.range[1]

/** Minutes on until ready of hair that lifts first, from those of the rest: never later, and no less wide. */
export const readyFirst = ({ low, mid, high }: Range): Range => ({
  low: low * liftsFirstShare.low,
  mid: mid * liftsFirstShare.mid,
  high: high * liftsFirstShare.high,
})
