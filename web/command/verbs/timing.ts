import type { Range } from "../../../geometry/hair/tradeFigures"
import { productSheets, sheetOf } from "../../core/document/salon"
import type { Plan, Refusal } from "../../core/document/schema"
import { findFixes } from "../../core/fixes/fixes"
import { goalRefusal, type LiftGoal } from "../../core/lift/scheduleReady"
import { choicesOfPlan } from "../../core/schedule/choicesOfPlan"
import { findConflicts } from "../../core/schedule/conflicts"
import { longestMin, type ServiceChoices, serviceOf } from "../../core/schedule/scheduleFromPlan"
import type { Service } from "../../core/schedule/scheduleInput"
import { serviceProblems } from "../../core/schedule/scheduleProblems"
import { planService, type Schedule } from "../../core/schedule/timing"
import { readPlan } from "../input/openFile"
import { done, refuse, type Verb } from "../input/verb"

export const timing: Verb = {
  usage:
    "FILE [--pace MINUTES] [--hands N] [--rinse each|together] [--from LEVEL --to LEVEL] [--booking MINUTES]",
  summary:
    "When each foil goes on, may be ready and comes off, the bowls and looks, and what cannot be kept.",
  details: [
    "Prints foils, bowls, looks, firstOnMin, lastOnMin, rinseMin and conflicts; beyond them chairMin (the whole visit, a",
    "range), heat (when it is on and off, or null), steps (rinse, detangle, toner by zone, dry) and, for each bowl, its mix and",
    "sections. An end of readyMin is null where the goal is not reached in time. Rules of conflicts: over-run,",
    "under-processed, pot-life, booking, and hairline-ahead (one rinse, and the hairline ready well before the back).",
  ],
  takesFile: true,
  options: {
    pace: "minutes a foil, from one to the next; the plan's pace if not given",
    hands: "pairs of hands, 1 or 2; as the plan says if not given",
    rinse: "each: every foil off when it is ready; together: one rinse; as the plan says if not given",
    from: "level of the hair now, 1 to 10; with --to; the plan's levels if not given",
    to: "level to lift to; without any foils are ready when most are",
    booking: "minutes booked for the chair; the plan's booking if not given",
  },
  run(request) {
    const chosen = choicesOf(request.options)
    if (!chosen.ok) return refuse(...chosen.problems)
    const read = readPlan(request)
    if (!read.ok) return refuse(...read.problems)
    const choices = { ...choicesOfPlan(read.plan), ...chosen.choices }
    const refused = choices.goal && goalRefusal(choices.goal)
    if (refused) return refuse(refused.refused)
    const service = serviceOf(read.plan, productSheets(read.plan), choices)
    const problems = serviceProblems(service)
    if (problems.length > 0) return refuse(...problems)
    return { ...done(objectOf(service, planService(service))), problems: notesOn(read.plan, choices) }
  },
}

/** Minutes of the service end in "AtMin", save where there is nothing else they could be; `readyMin` is minutes on. */
function objectOf(service: Service, schedule: Schedule) {
  const { foils, bowls, looksAtMin, firstOnMin, lastOnMin, rinseMin, chairMin, heat, steps } = schedule
  return {
    foils: foils.map(({ id, onAtMin, readyMin, limitAtMin, offAtMin, onMin }) => ({
      id,
      onAtMin,
      readyMin,
      limitAtMin,
      offAtMin,
      onMin,
    })),
    bowls: bowls.map(({ mix, atMin, foils: sections }) => ({ mix, atMin, sections })),
    looks: looksAtMin,
    firstOnMin,
    lastOnMin,
    rinseMin,
    chairMin,
    heat,
    steps,
    conflicts: findConflicts(service, schedule).map(({ rule, why, foils: sections }) => ({
      rule,
      why,
      sections,
      cures: findFixes(service, rule).map(({ label }) => label),
    })),
  }
}

/** What the clock had to assume. */
const notesOn = (plan: Plan, { goal }: ServiceChoices) => [
  goal
    ? "When a foil may be ready is an estimate from the lift its sheet prints. A strand test narrows it; look, and take off what is ready."
    : "Without --from and --to foils are taken as ready when most are (common practice). Look, and take off what is ready.",
  ...plan.mixes
    .filter(({ product }) => sheetOf(product, plan) === null)
    .map(
      ({ id, product }) =>
        `Mix ${id}: there is no sheet for "${product}"; ${longestMin(undefined)} minutes are taken as its longest time.`,
    ),
]

/** What the options say; the rest is the plan's to say. */
type Chosen = { ok: true; choices: Partial<ServiceChoices> } | { ok: false; problems: string[] }

function choicesOf(options: Readonly<Record<string, string>>): Chosen {
  const { pace, hands, rinse, booking } = options
  const goal = goalOf(options)
  const problems = [
    ...(isMinutes(pace) ? [] : [`--pace: expected minutes a foil above 0, found "${pace}".`]),
    ...(hands === undefined || hands === "1" || hands === "2"
      ? []
      : [`--hands: expected 1 or 2, found "${hands}".`]),
    ...(rinse === undefined || rinse === "each" || rinse === "together"
      ? []
      : [`--rinse: expected each or together, found "${rinse}".`]),
    ...(isMinutes(booking) ? [] : [`--booking: expected minutes above 0, found "${booking}".`]),
  ]
  if (goal && "refused" in goal) problems.push(goal.refused)
  if (problems.length > 0) return { ok: false, problems }
  return {
    ok: true,
    choices: {
      ...(pace !== undefined && { paceMin: always(Number(pace)), learntMin: null }),
      ...(hands !== undefined && { hands: hands === "2" ? 2 : 1 }),
      ...(rinse !== undefined && { rinse: rinse === "together" ? "together" : "each" }),
      ...(goal && "fromLevel" in goal && { goal, zoneGoals: {} }),
      ...(booking !== undefined && { bookingMin: Number(booking) }),
    },
  }
}

function goalOf({ from, to }: Readonly<Record<string, string>>): LiftGoal | Refusal | null {
  if (from === undefined && to === undefined) return null
  if (from === undefined || to === undefined)
    return { refused: "--from and --to: expected both levels, or neither." }
  const goal = { fromLevel: Number(from), toLevel: Number(to) }
  return goalRefusal(goal) ?? goal
}

const isMinutes = (typed: string | undefined) =>
  typed === undefined || (Number(typed) > 0 && Number.isFinite(Number(typed)))
const always = (minutes: number): Range => ({ low: minutes, mid: minutes, high: minutes })
