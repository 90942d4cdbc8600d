import { liftsFirstShare } from "../../../presets/timing/lift"
import { readyWithoutGoalMin } from "../../../presets/timing/pace"
import { productSheets, sheetOf } from "../document/salon"
import type { Plan } from "../document/schema"
import type { LiftsFirst } from "../lift/liftsFirst"
import { type GoalRefusal, goalRefusal } from "../lift/scheduleReady"
import { remembered } from "../memory/remembered"
import { choicesOfPlan } from "./choicesOfPlan"
import { type Conflict, findConflicts } from "./conflicts"
import { type HeatRefusal, heatRefusal } from "./heatRefusal"
import { longestMin, type ServiceChoices, serviceOf } from "./scheduleFromPlan"
import { heatFactor } from "./scheduleHeat"
import type { Service } from "./scheduleInput"
import { type ServiceProblem, serviceProblems } from "./scheduleProblems"
import { planService, type Schedule } from "./timing"

/** A plan on the clock: its service, the schedule and what cannot be kept in it; or why it cannot be timed. */
export type TimedPlan =
  | {
      ok: true
      service: Service
      schedule: Schedule
      conflicts: readonly Conflict[]
      assumed: readonly TimingAssumption[]
    }
  | { ok: false; problems: readonly TimingProblem[] }

/** Why a plan cannot be timed. */
export type TimingProblem = ServiceProblem | GoalRefusal

/** What the clock had to assume. */
export type TimingAssumption =
  | { code: "lift-by-sheet"; fromLevel: number; toLevel: number }
  | { code: "lift-by-strand"; fromLevel: number; toLevel: number }
  /** No levels: minutes on until most foils are ready. */
  | { code: "no-levels"; low: number; high: number }
  /** Hair expected before the rest, in these shares of its minutes; looked at from this minute on. */
  | { code: "lifts-first"; hair: LiftsFirst; low: number; high: number; lookMin: number }
  | { code: "learnt-pace" }
  | { code: "heat-left-out"; why: HeatRefusal }
  /** How many times as fast as without. */
  | { code: "heat-counted"; minutes: number; low: number; high: number }
  /** Roots that the hands come to later than they are to go on, the one that waits longest; "others" counts the rest. */
  | { code: "roots-wait"; foil: number; byMin: number; others: number }
  | { code: "no-sheet"; mix: string; product: string; limitMin: number }

/** Times a plan, once for as long as the plan lives. */
export const timedPlan = remembered((plan: Plan): TimedPlan => {
  const choices = choicesOfPlan(plan)
  const refused = choices.goal && goalRefusal(choices.goal)
  if (refused) return { ok: false, problems: [refused] }
  const service = serviceOf(plan, productSheets(plan), choices)
  const problems = serviceProblems(service)
  if (problems.length > 0) return { ok: false, problems }
  const schedule = planService(service)
  return {
    ok: true,
    service,
    schedule,
    conflicts: findConflicts(service, schedule),
    assumed: [...assumedOf(plan, service, choices), ...rootsWaiting(service, schedule)],
  }
})

function assumedOf(plan: Plan, service: Service, choices: ServiceChoices): TimingAssumption[] {
  return [
    levelsAssumed(choices),
    ...firstAssumed(service),
    ...(choices.learntMin ? [{ code: "learnt-pace" as const }] : []),
    ...heatAssumed(service),
    ...sheetsAssumed(plan),
  ]
}

function levelsAssumed({ goal, strandTest }: ServiceChoices): TimingAssumption {
  if (!goal) return { code: "no-levels", low: readyWithoutGoalMin.low, high: readyWithoutGoalMin.high }
  return { code: strandTest?.rows.length ? "lift-by-strand" : "lift-by-sheet", ...goal }
}

function firstAssumed({ foils, looks }: Service): TimingAssumption[] {
  const { low, high } = liftsFirstShare
  const hair = [...new Set(foils.flatMap(({ liftsFirst }) => liftsFirst ?? []))]
  return hair.map((each) => ({
    code: "lifts-first",
    hair: each,
    low,
    high,
    lookMin: looks.firstDelicateMin,
  }))
}

function heatAssumed(service: Service): TimingAssumption[] {
  if (!service.heat) return []
  const why = heatRefusal(service)
  if (why) return [{ code: "heat-left-out", why }]
  const { low, high } = heatFactor(service.heat.warmthC)
  return [{ code: "heat-counted", minutes: service.heat.minutes, low, high }]
}

/** Half a minute of waiting is told of nobody. */
const leastWaitMin = 0.5

function rootsWaiting({ foils }: Service, schedule: Schedule): TimingAssumption[] {
  const times = new Map(schedule.foils.map((each) => [each.id, each]))
  const waits = foils
    .flatMap(({ id, mapNumber, roots }) => {
      const { onAtMin = 0, rootsOnAtMin } = times.get(id) ?? {}
      if (!roots?.later || rootsOnAtMin === undefined) return []
      return { foil: mapNumber, byMin: rootsOnAtMin - onAtMin - roots.later.afterMin }
    })
    .filter(({ byMin }) => byMin > leastWaitMin)
    .sort((a, b) => b.byMin - a.byMin)
  return waits.slice(0, 1).map((worst) => ({ code: "roots-wait", ...worst, others: waits.length - 1 }))
}

/** Mixes whose product has no sheet. */
export const sheetsAssumed = (plan: Plan): TimingAssumption[] =>
  plan.mixes
    .filter(({ product }) => sheetOf(product, plan) === null)
    .map(({ id, product }) => ({ code: "no-sheet", mix: id, product, limitMin: longestMin(undefined) }))
