import type { Plan } from "../document/schema"
import { headOf } from "../figures/measured"
import { partingFault } from "./partingFault"
import { type Problem, problemAt } from "./problem"
import { dividerProblems } from "./workingSectionsFaults"

/** What is wrong with the drawing of a plan whose fields are in order: partings that could not be combed on its head. */
export function partingProblems(plan: Plan): Problem[] {
  const head = headOf(plan)
  const sections = plan.sections.flatMap(({ parting }, i) => {
    const fault = partingFault(parting, head)
    return fault
      ? [
          problemAt(
            ["sections", i, "parting", ...(fault.point === null ? [] : [fault.point])],
            fault.expected,
          ),
        ]
      : []
  })
  return [...sections, ...dividerProblems(plan)]
}
