import type { Edit } from "../document/edit"
import { newSalon } from "../document/salon"
import type { Plan } from "../document/schema"
import { setSalon } from "../edits/plan/setSalon"
import { salonForPlans } from "./salonOfPlan"
import type { SalonShelf } from "./salonRecord"
import { sameLearnt } from "./sameSalon"

/**
 * The change that brings a plan to what the scale has taught by now; null where it goes by that already, where this
 * salon has weighed nothing, or where the service has been done and its figures are history.
 */
export function followScale(plan: Plan, shelf: SalonShelf): Edit | null {
  if (plan.service || shelf.weighings.length === 0) return null
  const { learnt } = salonForPlans(shelf)
  return sameLearnt(learnt, (plan.salon ?? newSalon()).learnt) ? null : setSalon({ learnt })
}
