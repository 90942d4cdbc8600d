import { validateEdit } from "../../checks/validateEdit"
import type { Edit } from "../../document/edit"
import type { Plan } from "../../document/schema"

/** What the plan is called, for whom and when, and its note. */
export type PlanDetails = Partial<Pick<Plan, "name" | "date" | "client" | "note">>

export const setPlanDetails =
  (details: PlanDetails): Edit =>
  (plan) =>
    validateEdit(plan, { ...plan, ...details })

/** The initials alone: what stands on the client's card stays. */
export const setInitials =
  (initials: string): Edit =>
  (plan) =>
    setPlanDetails({ client: { ...plan.client, initials } })(plan)
