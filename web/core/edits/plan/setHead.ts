import { validateEdit } from "../../checks/validateEdit"
import type { Edit } from "../../document/edit"
import type { Plan } from "../../document/schema"

/** Fits the plan to another head or hairline: every section keeps its place on the scalp. */
export const setHead =
  (change: Partial<Plan["head"]>): Edit =>
  (plan) =>
    validateEdit(plan, { ...plan, head: { ...plan.head, ...change } })
