import { validateEdit } from "../../checks/validateEdit"
import { type Consultation, newConsultation } from "../../document/consultation"
import type { Edit } from "../../document/edit"

/** Writes down what was asked or seen; the rest of the consultation stays as it was. */
export const setConsultation =
  (change: Partial<Consultation>): Edit =>
  (plan) =>
    validateEdit(plan, { ...plan, consultation: { ...newConsultation(), ...plan.consultation, ...change } })
