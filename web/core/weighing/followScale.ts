import type { Edit } from "../document/edit"
import { newSalon } from "../document/salon"
import type { Plan } from "../document/schema"
import { setSalon } from "../edits/plan/setSalon"
import { salonForPlans } from "./salonOfPlan"
import type { SalonShelf } from "./salonRecord"
import { sameLearnt, sameStart } from "./sameSalon"

/**
 * The change that brings a plan to what the scale has taught by now; null where it goes by that already, where this
 * salon has weighed nothing, or where the service has been done and its figures are history.
 */
export function followScale(plan: Plan, shelf: SalonShelf): Edit | null {
  if (plan.service || (shelf.weighings.length === 0 && !shelf.start)) return null
  const { learnt, start } = salonForPlans(shelf)
  const { learnt: known, start: begun } = plan.salon ?? newSalon()
  return sameLearnt(learnt, known) && sameStart(start, begun) ? null : setSalon({ learnt, start })
}
