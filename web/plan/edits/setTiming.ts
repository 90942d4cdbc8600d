import type { Edit } from "../edit"
import type { TimingChoices } from "../timingChoices"
import { usualTiming } from "../usualTiming"
import { accept } from "./accept"

/** How the visit is timed, the rest as it was or as usual. */
export const setTiming =
  (change: Partial<TimingChoices>): Edit =>
  (plan) =>
    accept(plan, { ...plan, timing: { ...usualTiming, ...plan.timing, ...change } })
