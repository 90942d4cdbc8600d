import { foilMin } from "../../presets/pace"
import type { Plan } from "../plan/schema"
import { usualTiming } from "../plan/usualTiming"
import { goalOfPlan } from "./liftOfPlan"
import type { ServiceChoices } from "./scheduleFromPlan"

/** How a plan says that it is to be timed, and the usual where it does not say. */
export function choicesOfPlan(plan: Plan): ServiceChoices {
  const { skill, pace, hands, breaks, rinse, heatMin, bookingMin, strandTest } = plan.timing ?? usualTiming
  return {
    paceMin: foilMin[skill],
    learntMin: pace,
    hands,
    breaks,
    rinse,
    heatMin,
    bookingMin,
    goal: goalOfPlan(plan),
    strandTest,
  }
}
