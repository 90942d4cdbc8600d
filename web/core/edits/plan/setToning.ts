import { validateEdit } from "../../checks/validateEdit"
import type { Edit } from "../../document/edit"
import { newToning, type Toning } from "../../document/toning"

/** What is toned with, the rest as it was. */
export const setToning =
  (change: Partial<Toning>): Edit =>
  (plan) =>
    validateEdit(plan, { ...plan, toning: { ...newToning(), ...plan.toning, ...change } })
