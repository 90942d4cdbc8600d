import type { Plan } from "../plan/schema"
import type { Now } from "./alertTest"
import { checkPlan } from "./visitOfPlan"

/** Whether the mix is held, in a sentence for a sheet that hangs where others read it: no answer is told. */
export function stopsWords(plan: Plan, now: Now): string {
  const { stops, notKnown } = checkPlan(plan, now)
  if (stops.length > 0)
    return `NOT CLEARED: ${stops.length === 1 ? "a stop holds" : `${stops.length} stops hold`} the mix.`
  if (!plan.consultation) return "Stops: nothing has been asked yet."
  return notKnown.length > 0
    ? `Stops: none open; ${notKnown.length} answers are not known.`
    : "Stops: cleared."
}
