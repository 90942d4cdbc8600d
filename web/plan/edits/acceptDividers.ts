import type { Plan, Refusal } from "../schema"
import { dividingOf } from "../workingSections"
import type { Divider } from "../workingSectionsSchema"
import { accept } from "./accept"

/** The plan with other dividing partings, once they are in order; otherwise the reason why it cannot be. */
export function acceptDividers(plan: Plan, dividers: readonly Divider[]): Plan | Refusal {
  const { named } = dividingOf(plan)
  return accept(plan, { ...plan, workingSections: { dividers, named } })
}
