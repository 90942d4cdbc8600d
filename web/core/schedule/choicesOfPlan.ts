import { foilMin } from "../../../presets/timing/pace"
import type { Plan } from "../document/schema"
import type { TimingChoices } from "../document/timingChoices"
import { usualTiming } from "../document/usualTiming"
import { goalOfPlan } from "../lift/liftOfPlan"
import type { ServiceChoices } from "./scheduleFromPlan"

/** How a plan says that it is to be timed, and the usual where it does not say. */
export function choicesOfPlan(plan: Plan): ServiceChoices {
  const timing: TimingChoices = plan.timing ?? usualTiming
  const { skill, pace, hands, breaks, rinse, heatMin, bookingMin, strandTest } = timing
  return {
    paceMin: foilMin[skill],
    learntMin: pace ?? (skill === "usual" ? (plan.salon?.start?.paceMin ?? null) : null),
    hands,
    breaks,
    rinse,
    heatMin,
    heatC: timing.heatC ?? null,
    freshAt: timing.freshAt ?? [],
    secondPace: timing.secondPace ?? null,
    bookingMin,
    isDried: timing.isDried ?? true,
    goal: goalOfPlan(plan),
    countsByHair: timing.lift === null && goalOfPlan(plan) !== null,
    strandTest,
  }
}
