import type { Edit } from "../edit"
import type { Plan } from "../schema"
import { accept } from "./accept"

/** What the plan is called, for whom and when, and its note. */
export type PlanDetails = Partial<Pick<Plan, "name" | "date" | "client" | "note">>

export const setPlanDetails =
  (details: PlanDetails): Edit =>
  (plan) =>
    accept(plan, { ...plan, ...details })
