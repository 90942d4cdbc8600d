import { houseProducts } from "../../presets/houseProducts"
import { foilMin } from "../../presets/pace"
import type { Plan } from "../plan/schema"
import { usualTiming } from "../plan/usualTiming"
import { type Conflict, findConflicts } from "./conflicts"
import { longestMin, serviceOf } from "./scheduleFromPlan"
import type { Service } from "./scheduleInput"
import { serviceProblems } from "./scheduleProblems"
import { goalRefusal } from "./scheduleReady"
import { planService, type Schedule } from "./timing"

/** A plan on the clock: its service, the schedule and what cannot be kept in it; or why it cannot be timed. */
export type TimedPlan =
  | {
      ok: true
      service: Service
      schedule: Schedule
      conflicts: readonly Conflict[]
      assumed: readonly string[]
    }
  | { ok: false; problems: readonly string[] }

const remembered = new WeakMap<Plan, TimedPlan>()

/** Times a plan, once for as long as the plan lives. */
export function timedPlan(plan: Plan): TimedPlan {
  const known = remembered.get(plan) ?? time(plan)
  remembered.set(plan, known)
  return known
}

function time(plan: Plan): TimedPlan {
  const { skill, hands, rinse, bookingMin, lift } = plan.timing ?? usualTiming
  const refused = lift && goalRefusal(lift)
  if (refused) return { ok: false, problems: [refused.refused] }
  const service = serviceOf(plan, houseProducts, {
    paceMin: foilMin[skill],
    hands,
    rinse,
    bookingMin,
    goal: lift,
  })
  const problems = serviceProblems(service)
  if (problems.length > 0) return { ok: false, problems }
  const schedule = planService(service)
  return {
    ok: true,
    service,
    schedule,
    conflicts: findConflicts(service, schedule),
    assumed: assumedOf(plan),
  }
}

/** What the clock had to assume, in sentences. */
function assumedOf({ mixes, timing }: Plan): string[] {
  const unknown = mixes.filter(({ product }) => houseProducts.every(({ name }) => name !== product))
  return [
    timing?.lift
      ? "When a foil may be ready is an estimate from the lift its sheet prints."
      : "No levels are given: foils are taken as ready when most are (common practice).",
    ...unknown.map(
      ({ id, product }) =>
        `Mix ${id}: there is no sheet for “${product}”; ${longestMin(undefined)} minutes are taken as its longest time.`,
    ),
  ]
}
