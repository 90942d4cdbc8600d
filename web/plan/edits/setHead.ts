import type { Edit } from "../edit"
import type { Plan } from "../schema"
import { accept } from "./accept"

/** Fits the plan to another head or hairline: every section keeps its place on the scalp. */
export const setHead =
  (change: Partial<Plan["head"]>): Edit =>
  (plan) =>
    accept(plan, { ...plan, head: { ...plan.head, ...change } })
