import { examplePlanText } from "../../../presets/plans/examplePlan"
import type { Plan } from "../document/schema"
import { openPlan } from "./planFile"

/** The finished example, through the same door as any file. */
export function examplePlan(): Plan {
  const opened = openPlan(examplePlanText)
  if (!opened.ok)
    throw new Error(`The example does not open: ${opened.problems[0].path} ${opened.problems[0].code}`)
  return opened.plan
}
