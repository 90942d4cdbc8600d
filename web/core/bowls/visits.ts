import type { Plan } from "../document/schema"
import type { Stage } from "../mixing/developer"
import { mixesOfPlan } from "./mixesOfPlan"

/** The visits that the lift wanted takes, the most of any mix in use; none where one visit gives it. */
export function visitsOfPlan(plan: Plan): readonly Stage[] {
  const staged = mixesOfPlan(plan).flatMap(({ users, proposed }) =>
    users > 0 && proposed?.kind === "stages" ? [proposed.stages] : [],
  )
  return staged.toSorted((a, b) => b.length - a.length || a[0].toLevel - b[0].toLevel)[0] ?? []
}
