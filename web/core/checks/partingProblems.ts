import type { SurfacePath } from "../../../geometry/surface/surfacePath"
import type { Plan } from "../document/schema"
import type { Problem } from "../fields/problem"
import { headOf } from "../figures/measured"
import { partingFault } from "./partingFault"
import { problemAt } from "./problem"
import { dividerProblems } from "./workingSectionsFaults"

/** Partings that are no line, on whatever head: all their points are one. */
export const lineProblems = ({ sections, later = [], workingSections }: Plan): Problem[] => [
  ...pointsOnly(sections, ["sections"], "line-too-short"),
  ...pointsOnly(later, ["later"], "line-too-short"),
  ...pointsOnly(workingSections?.dividers ?? [], ["workingSections", "dividers"], "divider-too-short"),
]

const pointsOnly = (
  lines: readonly { parting: SurfacePath }[],
  path: readonly string[],
  code: "line-too-short" | "divider-too-short",
) =>
  lines.flatMap(({ parting: [first, ...rest] }, i) =>
    rest.every((at) => at[0] === first[0] && at[1] === first[1])
      ? [problemAt([...path, i, "parting"], { code, leastMm: shortestMm, foundMm: 0 })]
      : [],
  )

const shortestMm = 2

/** What is wrong with the drawing of a plan whose fields are in order: partings that could not be combed on its head. */
export function partingProblems(plan: Plan): Problem[] {
  const head = headOf(plan)
  const sections = plan.sections.flatMap(({ parting }, i) => {
    const fault = partingFault(parting, head)
    return fault
      ? [problemAt(["sections", i, "parting", ...(fault.point === null ? [] : [fault.point])], fault.fault)]
      : []
  })
  return [...sections, ...dividerProblems(plan)]
}
