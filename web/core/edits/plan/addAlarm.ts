import { validateEdit } from "../../checks/validateEdit"
import type { Edit } from "../../document/edit"

/** What the red button was touched for while no service was going on. */
export const addAlarm =
  (what: string, wallAt: string): Edit =>
  (plan) =>
    validateEdit(plan, { ...plan, alarms: [...(plan.alarms ?? []), { wallAt, what }] })
