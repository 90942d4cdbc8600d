import { copyOf } from "./newPlan"
import { wholePairs } from "./pairs"
import type { Plan } from "./schema"

/**
 * A plan for the visit after the last service: the same head, drawing and mixes, and that service among the earlier
 * ones. What was asked stays with its own day; what is to be asked anew says so by itself.
 */
export function nextVisit({ service, alarms: _, earlier = [], later: __, ...plan }: Plan, day: string): Plan {
  if (!service) return { ...copyOf(plan), date: day }
  const { drawn: ___, ...kept } = service
  return { ...copyOf(plan), date: day, earlier: [...earlier, kept] }
}

/** A plan of this name with only the foils kept for another day: the same client, head and mixes, and nothing that happened today. A foil whose twin stays behind is single. */
export function laterVisit(
  { later = [], service: _, earlier: __, alarms: ___, ...plan }: Plan,
  name: string,
): Plan {
  return { ...copyOf(plan), name, sections: wholePairs(later) }
}
