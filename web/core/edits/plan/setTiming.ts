import { validateEdit } from "../../checks/validateEdit"
import type { Edit } from "../../document/edit"
import type { TimingChoices } from "../../document/timingChoices"
import { usualTiming } from "../../document/usualTiming"

/** How the visit is timed, the rest as it was or as usual. */
export const setTiming =
  (change: Partial<TimingChoices>): Edit =>
  (plan) =>
    validateEdit(plan, { ...plan, timing: { ...usualTiming, ...plan.timing, ...change } })
