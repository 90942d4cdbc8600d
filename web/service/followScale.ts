import type { Edit } from "../plan/edit"
import { setSalon } from "../plan/edits/setSalon"
import { newSalon } from "../plan/salon"
import type { SalonShelf } from "../plan/salonRecord"
import { sameLearnt } from "../plan/sameSalon"
import type { Plan } from "../plan/schema"
import { salonForPlans } from "./salonOfPlan"

/**
 * The change that brings a plan to what the scale has taught by now; null where it goes by that already, where this
 * salon has weighed nothing, or where the service has been done and its figures are history.
 */
export function followScale(plan: Plan, shelf: SalonShelf): Edit | null {
  if (plan.service || shelf.weighings.length === 0) return null
  const { learnt } = salonForPlans(shelf)
  return sameLearnt(learnt, (plan.salon ?? newSalon()).learnt) ? null : setSalon({ learnt })
}
