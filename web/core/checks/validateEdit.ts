import type { Section } from "../../../geometry/section/section"
import { counts } from "../document/limits"
import { wholePairs } from "../document/pairs"
import { type Plan, planSchema, type Refusal, sectionSchema } from "../document/schema"
import { headOf } from "../figures/measured"
import { sectionName } from "../text/sectionName"
import { headProblems } from "./headProblems"
import { partingFault } from "./partingFault"
import { planRules } from "./planRules"
import { problemsOf } from "./problem"
import { dividersFault } from "./workingSectionsFaults"

/** The plan as an edit leaves it, once all that is new in it is in order; otherwise the reason why it cannot be. */
export function validateEdit(before: Plan, wanted: Plan): Plan | Refusal {
  const after = { ...wanted, sections: wholePairs(wanted.sections) }
  const refused = fieldFault(after) ?? drawingFault(before, after)
  return refused === null ? after : { refused }
}

function fieldFault(plan: Plan): string | null {
  if (plan.sections.length > counts.sections.high)
    return `A plan holds at most ${counts.sections.high} sections`
  const rest = { ...plan, sections: [] }
  const parsed = planSchema.safeParse(rest)
  if (!parsed.success) return problemsOf(parsed.error.issues[0], rest)[0].expected
  const [problem] = [...planRules(plan), ...headProblems(plan)]
  return problem?.expected ?? null
}

function drawingFault(before: Plan, after: Plan): string | null {
  const known = new Set(headOf(before) === headOf(after) ? before.sections : [])
  for (const section of after.sections) {
    const fault = known.has(section) ? null : sectionFault(section, after)
    if (fault !== null) return fault
  }
  return isDividedAlike(before, after) ? null : dividersFault(after)
}

const isDividedAlike = (before: Plan, after: Plan) =>
  after.workingSections?.dividers === before.workingSections?.dividers && headOf(before) === headOf(after)

function sectionFault(section: Section, plan: Plan): string | null {
  const parsed = sectionSchema.safeParse(section)
  const fault = parsed.success
    ? partingFault(section.parting, headOf(plan))?.expected
    : problemsOf(parsed.error.issues[0], section)[0].expected
  return fault ? `${sectionName(section)}: ${fault}` : null
}
