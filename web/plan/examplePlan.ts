import { examplePlanText } from "../../presets/examplePlan"
import { openPlan } from "./planFile"
import type { Plan } from "./schema"

/** The finished example, through the same door as any file. */
export function examplePlan(): Plan {
  const opened = openPlan(examplePlanText)
  if (!opened.ok) throw new Error(`The example does not open: ${opened.problems[0].expected}`)
  return opened.plan
}
