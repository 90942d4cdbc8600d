import { validateEdit } from "../../checks/validateEdit"
import type { Edit } from "../../document/edit"
import { newSalon, type Salon } from "../../document/salon"

/** What of the salon rules the plan from now on; the rest as it was. */
export const setSalon =
  (change: Partial<Salon>): Edit =>
  (plan) =>
    validateEdit(plan, { ...plan, salon: { ...newSalon(), ...plan.salon, ...change } })
