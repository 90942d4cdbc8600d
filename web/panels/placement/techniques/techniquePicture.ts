import type { Technique } from "../../../../presets/techniques/technique"
import { newPlan } from "../../../core/document/newPlan"
import type { Plan } from "../../../core/document/schema"
import { techniqueSections } from "../../../core/edits/lay/layTechnique"
import { type PlanPicture, planPicture } from "../../heads/planPicture"

const anyPlan = newPlan(new Date(0))

/** The picture of a technique on the head of a plan, or on the usual one, in the view that shows the most of it. */
export function techniquePicture(
  technique: Pick<Technique, "sections">,
  { head }: Pick<Plan, "head"> = anyPlan,
): PlanPicture {
  const blank = { ...anyPlan, head }
  return planPicture({ ...blank, sections: techniqueSections(technique, blank) })
}
