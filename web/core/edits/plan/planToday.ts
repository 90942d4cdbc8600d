import { type Edit, isRefusal } from "../../document/edit"
import { setConsultation } from "./setConsultation"
import { setPlanDetails } from "./setPlanDetails"

/** Makes of a plan its first visit: the level of today as the target, and what comes next in its note. */
export const planToday =
  (level: number, next: string): Edit =>
  (plan) => {
    const aimed = setConsultation({ liftToLevel: level })(plan)
    if (isRefusal(aimed)) return aimed
    const note = [plan.note, next].filter(Boolean).join("\n")
    return setPlanDetails({ note })(aimed)
  }
