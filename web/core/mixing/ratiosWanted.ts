import { isCoatedWith, isFoil } from "../../../geometry/section/section"
import type { Consistency } from "../../../presets/formula/consistency"
import { sheetOf } from "../document/salon"
import type { Mix, Plan } from "../document/schema"
import { consistencyOf, ratioFor } from "./ratio"

/** Parts of developer to one of lightener, how such a mix stands, and how many foils want it so. */
export type WantedRatio = { parts: number; consistency: Consistency; foils: number }

/** The ratios that the foils of a mix want by how they are worked, the most wanted first; none without a sheet. */
export function ratiosWanted(mix: Mix, plan: Plan): WantedRatio[] {
  const sheet = sheetOf(mix.product, plan)
  if (!sheet) return []
  const wanted = new Map<string, WantedRatio>()
  for (const foil of plan.sections.filter(isFoil).filter((each) => isCoatedWith(each, mix.id))) {
    const consistency = consistencyOf(foil, plan)
    const known = wanted.get(consistency)
    wanted.set(consistency, {
      parts: ratioFor(consistency, sheet).developer,
      consistency,
      foils: (known?.foils ?? 0) + 1,
    })
  }
  return [...wanted.values()].toSorted((a, b) => b.foils - a.foils)
}
