import { withdrawnBetween } from "../../cautions/withdrawn"
import { validateEdit } from "../../checks/validateEdit"
import { type Consultation, newConsultation } from "../../document/consultation"
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
