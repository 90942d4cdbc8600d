import type { Section } from "../../../geometry/section/section"
import { refuse } from "../document/edit"
import { wholePairs } from "../document/pairs"
import type { Refusal } from "../document/refusal"
import { type Plan, planSchema } from "../document/schema"
import { sectionNameOf } from "../document/sectionNameCode"
import { counts } from "../fields/limits"
import { headOf } from "../figures/measured"
import { sectionSchema } from "../kinds/sectionSchema"
import { headProblems } from "./headProblems"
import { partingFault } from "./partingFault"
import { planRules } from "./planRules"
import { problemAt, problemsOf } from "./problem"
import { bareCoatNote, bareNote } from "./sectionNotes"
import { dividersFault } from "./workingSectionsFaults"

/** The plan as an edit leaves it, once all that is new in it is in order; otherwise the reason why it cannot be. */
export function validateEdit(before: Plan, wanted: Plan): Plan | Refusal {
  const after = { ...wanted, sections: wholePairs(wanted.sections) }
  return fieldFault(after) ?? drawingFault(before, after) ?? after
}

function fieldFault(plan: Plan): Refusal | null {
  if (plan.sections.length > counts.sections.high)
    return refuse({ code: "too-many-sections", most: counts.sections.high })
  // What was lightened is history: no edit changes it, and it may be long.
  const { lightened: _, ...rest } = { ...plan, sections: [] }
  const parsed = planSchema.safeParse(rest)
  if (!parsed.success)
    return refuse({ code: "problem", problem: problemsOf(parsed.error.issues[0], rest)[0] })
  const [problem] = [...planRules(plan), ...headProblems(plan)]
  return problem ? refuse({ code: "problem", problem }) : null
}

function drawingFault(before: Plan, after: Plan): Refusal | null {
  const known = new Set(headOf(before) === headOf(after) ? before.sections : [])
  for (const section of after.sections) {
    const fault = known.has(section) ? null : sectionFault(section, after)
    if (fault !== null) return fault
  }
  return isDividedAlike(before, after) ? null : dividersFault(after)
}

const isDividedAlike = (before: Plan, after: Plan) =>
  after.workingSections?.dividers === before.workingSections?.dividers && headOf(before) === headOf(after)

function sectionFault(section: Section, plan: Plan): Refusal | null {
  const problem = sectionProblem(section, plan)
  return problem && refuse({ code: "section-problem", section: sectionNameOf(section), problem })
}

function sectionProblem(section: Section, plan: Plan) {
  const parsed = sectionSchema.safeParse(section)
  if (!parsed.success) return problemsOf(parsed.error.issues[0], section)[0]
  const fault = partingFault(section.parting, headOf(plan))
  if (fault) return problemAt([], fault.fault)
  const [bare] = bareNote(section, plan)
  if (bare) return problemAt(["rootDistanceMm"], { ...bare, code: "nothing-to-coat" })
  const [coat] = bareCoatNote(section, plan)
  return coat ? problemAt(["roots", "toMm"], bareCoatFault(coat)) : null
}

const bareCoatFault = ({ part, startMm, toMm, lengthCm }: ReturnType<typeof bareCoatNote>[number]) =>
  part === "ends"
    ? { code: "no-ends" as const, toMm, lengthCm }
    : { code: "no-roots" as const, startMm, toMm }
