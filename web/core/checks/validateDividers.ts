import type { Refusal } from "../document/refusal"
import type { Plan } from "../document/schema"
import type { Divider } from "../document/workingSectionsSchema"
import { dividingOf } from "../figures/workingSections"
import { validateEdit } from "./validateEdit"

/** The plan with other dividing partings, once they are in order; otherwise the reason why it cannot be. */
export function validateDividers(plan: Plan, dividers: readonly Divider[]): Plan | Refusal {
  const { named } = dividingOf(plan)
  return validateEdit(plan, { ...plan, workingSections: { dividers, named } })
}
