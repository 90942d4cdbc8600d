import type { Plan } from "../document/schema"
import { headOf } from "../figures/measured"
import { hairlineProblems } from "./hairlineProblems"
import { type Problem, problemAt } from "./problem"

/** What is wrong with a head whose measures are each possible but do not go together, or with its hairline. */
export function headProblems(plan: Pick<Plan, "head">): Problem[] {
  try {
    headOf(plan)
    return hairlineProblems(plan)
  } catch (error) {
    if (error instanceof RangeError) return [problemAt(["head", "size"], error.message)]
    throw error
  }
}
