import { type Consultation, newConsultation, type Withdrawn } from "../document/consultation"
import type { Plan } from "../document/schema"
import type { Now } from "../text/zonedTime"
import { checkVisit } from "./cautions"
import { mixRules } from "./rules/mixRules"
import { visitOf } from "./visitOfPlan"

/** The stops of client, hair and tests that one plan has and the next has not: what, when and by whom. */
export function withdrawnBetween(plan: Plan, next: Plan, now: Now): Withdrawn[] {
  const before = stopsOfClient(plan, now)
  const after = new Set(stopsOfClient(next, now).map(keyOf))
  const by = next.consultation?.askedBy || plan.consultation?.askedBy || ""
  return before.filter((stop) => !after.has(keyOf(stop))).map((stop) => ({ ...stop, at: now.moment, by }))
}

/**
 * A plan that undo or redo leads to: what was taken back before stays written down, and what this step takes back of the
 * answers and tests is written down too.
 */
export function withWithdrawn(before: Plan, after: Plan, now: Now): Plan {
  if (before.consultation === after.consultation) return after
  const asked = { ...before, consultation: after.consultation }
  const lines = once([
    ...linesOf(before.consultation),
    ...linesOf(after.consultation),
    ...withdrawnBetween(before, asked, now),
  ])
  if (lines.length === linesOf(after.consultation).length) return after
  return { ...after, consultation: { ...newConsultation(), ...after.consultation, withdrawn: lines } }
}

const linesOf = (known: Consultation | undefined) => known?.withdrawn ?? []

const once = (lines: readonly Withdrawn[]): Withdrawn[] => [
  ...new Map(lines.map((line) => [JSON.stringify([line.rule, line.about, line.at, line.by]), line])).values(),
]

type Stopped = { rule: string; about?: string }

/** An allergy stops whatever it is to: putting that into words takes no answer back. */
const keyOf = ({ rule, about }: Stopped) => JSON.stringify(rule === "allergy" ? [rule] : [rule, about])

/** What a mix is or a test has yet to become changes all the time; an answer and a result that stop do not. */
function stopsOfClient(plan: Plan, now: Now): Stopped[] {
  const { stops, cautions } = checkVisit(visitOf(plan, now))
  return [...stops, ...cautions]
    .filter(({ severity, rule }) => severity === "stop" && !isElsewhere(rule) && !(rule in mixRules))
    .map(({ rule, about }) => ({ rule, ...(about ? { about } : {}) }))
}

/** A test's stop ends with time; what stands on the card is only told by another stop once it is answered. */
const isElsewhere = (rule: string) => ["alert-test", "card-allergy", "card-dye-allergy"].includes(rule)
