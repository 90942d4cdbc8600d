import type { Range } from "../../../geometry/tradeFigures"
import { houseProducts } from "../../../presets/houseProducts"
import { foilMin } from "../../../presets/pace"
import type { Plan } from "../../plan/schema"
import { findConflicts } from "../../service/conflicts"
import { findCures } from "../../service/cures"
import { longestMin, type ServiceChoices, serviceOf } from "../../service/scheduleFromPlan"
import type { Service } from "../../service/scheduleInput"
import { serviceProblems } from "../../service/scheduleProblems"
import { planService, type Schedule } from "../../service/timing"
import { readPlan } from "../openFile"
import { done, refuse, type Verb } from "../verb"

export const timing: Verb = {
  usage: "FILE [--pace MINUTES] [--hands N] [--rinse each|together] [--booking MINUTES]",
  summary:
    "When each foil goes on, may be ready and comes off, the bowls and looks, and what cannot be kept.",
  takesFile: true,
  options: {
    pace: "minutes a foil, from one to the next; the usual 1.5 to 2.5 if not given",
    hands: "pairs of hands, 1 or 2; 1 if not given",
    rinse: "each: every foil off when it is ready; together: one rinse; each if not given",
    booking: "minutes booked for the chair; not checked if not given",
  },
  run(request) {
    const chosen = choicesOf(request.options)
    if (!chosen.ok) return refuse(...chosen.problems)
    const read = readPlan(request)
    if (!read.ok) return refuse(...read.problems)
    const service = serviceOf(read.plan, houseProducts, chosen.choices)
    const problems = serviceProblems(service)
    if (problems.length > 0) return refuse(...problems)
    return { ...done(objectOf(service, planService(service))), problems: notesOn(read.plan) }
  },
}

/** Minutes of the service end in "AtMin", save where there is nothing else they could be; `readyMin` is minutes on. */
function objectOf(service: Service, schedule: Schedule) {
  const { foils, bowls, looksAtMin, firstOnMin, lastOnMin, rinseMin, chairMin } = schedule
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
    conflicts: findConflicts(service, schedule).map(({ rule, why, foils: sections }) => ({
      rule,
      why,
      sections,
      cures: findCures(service, rule).map(({ label }) => label),
    })),
  }
}

/** What the clock had to assume. */
const notesOn = ({ mixes }: Plan) => [
  "A plan states no goal: foils are taken as ready when most are (common practice). Look, and take off what is ready.",
  ...mixes
    .filter(({ product }) => !houseProducts.some(({ name }) => name === product))
    .map(
      ({ id, product }) =>
        `Mix ${id}: there is no sheet for "${product}"; ${longestMin(undefined)} minutes are taken as its longest time.`,
    ),
]

type Chosen = { ok: true; choices: ServiceChoices } | { ok: false; problems: string[] }

function choicesOf({ pace, hands = "1", rinse = "each", booking }: Readonly<Record<string, string>>): Chosen {
  const problems = [
    ...(isMinutes(pace) ? [] : [`--pace: expected minutes a foil above 0, found "${pace}".`]),
    ...(hands === "1" || hands === "2" ? [] : [`--hands: expected 1 or 2, found "${hands}".`]),
    ...(rinse === "each" || rinse === "together"
      ? []
      : [`--rinse: expected each or together, found "${rinse}".`]),
    ...(isMinutes(booking) ? [] : [`--booking: expected minutes above 0, found "${booking}".`]),
  ]
  if (problems.length > 0) return { ok: false, problems }
  return {
    ok: true,
    choices: {
      paceMin: pace === undefined ? foilMin.usual : always(Number(pace)),
      hands: hands === "2" ? 2 : 1,
      rinse: rinse === "together" ? "together" : "each",
      bookingMin: booking === undefined ? null : Number(booking),
    },
  }
}

const isMinutes = (typed: string | undefined) =>
  typed === undefined || (Number(typed) > 0 && Number.isFinite(Number(typed)))
const always = (minutes: number): Range => ({ low: minutes, mid: minutes, high: minutes })
