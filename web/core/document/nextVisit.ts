import { copyOf } from "./newPlan"
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
