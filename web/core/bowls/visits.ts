import type { Edit } from "../document/edit"
import { isRefusal } from "../document/edit"
import type { Plan } from "../document/schema"
import { setConsultation } from "../edits/plan/setConsultation"
import { setPlanDetails } from "../edits/plan/setPlanDetails"
import type { Stage } from "../mixing/developer"
import { mixesOfPlan } from "./mixesOfPlan"

/** The visits that the lift wanted takes, the most of any mix in use; none where one visit gives it. */
export function visitsOfPlan(plan: Plan): readonly Stage[] {
  const staged = mixesOfPlan(plan).flatMap(({ users, proposed }) =>
    users > 0 && proposed?.kind === "stages" ? [proposed.stages] : [],
  )
  return staged.toSorted((a, b) => b.length - a.length || a[0].toLevel - b[0].toLevel)[0] ?? []
}

/** Makes of a plan its first visit: the level of today as the target, and what comes next in its note. */
export const planToday =
  (level: number, next: string): Edit =>
  (plan) => {
    const aimed = setConsultation({ liftToLevel: level })(plan)
    if (isRefusal(aimed)) return aimed
    const note = [plan.note, next].filter(Boolean).join("\n")
    return setPlanDetails({ note })(aimed)
  }
