import type { SectionKind } from "../../geometry/section/section"
import { surfacePoint } from "../../geometry/surface/frames"
import { type Edit, isRefusal } from "../../web/core/document/edit"
import { newPlan } from "../../web/core/document/newPlan"
import { newSection, usualSection } from "../../web/core/document/newSection"
import type { Plan } from "../../web/core/document/schema"
import { say } from "../../web/words/say"
import { en } from "./words"

/** Partings on the top of the head, well inside the hairline of any form. */
export const rightParting = [surfacePoint(0.15, 0.9), surfacePoint(0.41, 0.83), surfacePoint(0.62, 0.67)]
export const crownParting = [surfacePoint(-0.37, -0.21), surfacePoint(0.02, -0.4), surfacePoint(0.33, -0.3)]

export const emptyPlan: Plan = { ...newPlan(new Date(2026, 2, 9)), id: "sample", name: "Sample" }

const kinds = ["slice", "weave", "backcomb", "left-out"] as const satisfies readonly SectionKind[]

/** A plan of one section a kind, ids s1 to s4, map numbers 1 to 3; the last is left out. */
export const samplePlan: Plan = withSections(emptyPlan, kinds)

function withSections(plan: Plan, [kind, ...rest]: readonly SectionKind[]): Plan {
  if (!kind) return plan
  const section = newSection(kind, rest.length % 2 ? rightParting : crownParting, plan, {
    ...usualSection,
    leftOutName: "Veil",
  })
  return withSections({ ...plan, sections: [...plan.sections, section] }, rest)
}

/** The plan as an edit leaves it that must not be refused. */
export function done(edit: Edit, plan: Plan = samplePlan): Plan {
  const result = edit(plan)
  if (isRefusal(result)) throw new Error(result.refused.code)
  return result
}

/** Why an edit is refused, in British English, or null when it is not. */
export function refusal(edit: Edit, plan: Plan = samplePlan): string | null {
  const result = edit(plan)
  return isRefusal(result) ? say(en.problems.refusals, result.refused) : null
}
