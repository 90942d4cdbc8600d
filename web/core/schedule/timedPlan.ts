import { productSheets, sheetOf } from "../document/salon"
import type { Plan } from "../document/schema"
import { goalRefusal } from "../lift/scheduleReady"
import { numberText } from "../text/numberText"
import { choicesOfPlan } from "./choicesOfPlan"
import { type Conflict, findConflicts } from "./conflicts"
import { longestMin, type ServiceChoices, serviceOf } from "./scheduleFromPlan"
import { heatFactor } from "./scheduleHeat"
import type { Service } from "./scheduleInput"
import { heatRefusal, serviceProblems } from "./scheduleProblems"
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
  const choices = choicesOfPlan(plan)
  const refused = choices.goal && goalRefusal(choices.goal)
  if (refused) return { ok: false, problems: [refused.refused] }
  const service = serviceOf(plan, productSheets(plan), choices)
  const problems = serviceProblems(service)
  if (problems.length > 0) return { ok: false, problems }
  const schedule = planService(service)
  return {
    ok: true,
    service,
    schedule,
    conflicts: findConflicts(service, schedule),
    assumed: assumedOf(plan, service, choices),
  }
}

function heatSentence({ minutes, warmthC }: NonNullable<Service["heat"]>): string {
  const { low, high } = heatFactor(warmthC)
  return `The ${numberText(minutes)} minutes of heat are counted as ${numberText(low, 1)} to ${numberText(high, 1)} times as fast as the scalp’s own warmth: look as soon as they are over.`
}

/** What the clock had to assume, in sentences. */
function assumedOf(plan: Plan, service: Service, { goal, learntMin, strandTest }: ServiceChoices): string[] {
  const unknown = plan.mixes.filter(({ product }) => sheetOf(product, plan) === null)
  const heat = heatRefusal(service)
  return [
    ...(goal
      ? [
          `From level ${goal.fromLevel} to ${goal.toLevel}: when a foil may be ready is an estimate from the lift its sheet prints${strandTest?.rows.length ? " and from the strand test" : ""}.`,
        ]
      : ["No levels are given: foils are taken as ready when most are (common practice)."]),
    ...(learntMin ? ["The pace is the one learnt at the chair."] : []),
    ...(heat ? [`${heat} It is left out of the clock.`] : []),
    ...(service.heat && !heat ? [heatSentence(service.heat)] : []),
    ...unknown.map(
      ({ id, product }) =>
        `Mix ${id}: there is no sheet for “${product}”; ${longestMin(undefined)} minutes are taken as its longest time.`,
    ),
  ]
}
