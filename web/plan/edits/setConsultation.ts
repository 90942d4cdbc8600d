import { type Consultation, newConsultation } from "../consultation"
import type { Edit } from "../edit"
import { accept } from "./accept"

/** Writes down what was asked or seen; the rest of the consultation stays as it was. */
export const setConsultation =
  (change: Partial<Consultation>): Edit =>
  (plan) =>
    accept(plan, { ...plan, consultation: { ...newConsultation(), ...plan.consultation, ...change } })
