import { checkVisit } from "../../cautions/cautions"
import { mixRules } from "../../cautions/rules/mixRules"
import { visitOf } from "../../cautions/visitOfPlan"
import { validateEdit } from "../../checks/validateEdit"
import { type Consultation, newConsultation, type Withdrawn } from "../../document/consultation"
import type { Edit } from "../../document/edit"
import type { Plan } from "../../document/schema"
import type { Now } from "../../text/zonedTime"

/** Records what was wished; the rest of the consultation stays as it was. */
export const setConsultation =
  (change: Partial<Consultation>): Edit =>
  (plan) =>
    validateEdit(plan, changed(plan, change))

/** Records what was asked, seen or tested. What stopped the plan before it and no longer does leaves a line. */
export const recordConsultation =
  (change: Partial<Consultation>, now: Now): Edit =>
  (plan) => {
    const next = changed(plan, change)
    const lines = withdrawnBetween(plan, next, now)
    const { withdrawn } = next.consultation
    return validateEdit(
      plan,
      lines.length === 0
        ? next
        : { ...next, consultation: { ...next.consultation, withdrawn: [...withdrawn, ...lines] } },
    )
  }

const changed = (plan: Plan, change: Partial<Consultation>) => ({
  ...plan,
  consultation: { ...newConsultation(), ...plan.consultation, ...change },
})

/** The stops of client, hair and tests that one plan has and the next has not: what, when and by whom. */
function withdrawnBetween(plan: Plan, next: Plan, now: Now): Withdrawn[] {
  const before = stopsOfClient(plan, now)
  const after = new Set(stopsOfClient(next, now).map(keyOf))
  return before
    .filter((stop) => !after.has(keyOf(stop)))
    .map((stop) => ({ ...stop, at: now.moment, by: next.consultation?.askedBy ?? "" }))
}

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
