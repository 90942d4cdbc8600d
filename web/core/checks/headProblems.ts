import { HeadSizeError } from "../../../geometry/scalp/headSize"
import type { Plan } from "../document/schema"
import type { Problem } from "../fields/problem"
import { headOf } from "../figures/measured"
import { hairlineProblems } from "./hairlineProblems"
import { problemAt } from "./problem"

/** What is wrong with a head whose measures are each possible but do not go together, or with its hairline. */
export function headProblems(plan: Pick<Plan, "head">): Problem[] {
  try {
    headOf(plan)
    return hairlineProblems(plan)
  } catch (error) {
    if (error instanceof HeadSizeError)
      return [problemAt(["head", "size"], { code: "head-size", ...error.fault })]
    throw error
  }
}
