import type { Edit } from "../edit"
import { newSalon, type Salon } from "../salon"
import { accept } from "./accept"

/** What of the salon rules the plan from now on; the rest as it was. */
export const setSalon =
  (change: Partial<Salon>): Edit =>
  (plan) =>
    accept(plan, { ...plan, salon: { ...newSalon(), ...plan.salon, ...change } })
