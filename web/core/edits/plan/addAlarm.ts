import { validateEdit } from "../../checks/validateEdit"
import type { Edit } from "../../document/edit"
import type { AlarmTap } from "../../document/serviceRecord"

/** What the red button was touched for while no service was going on. */
export const addAlarm =
  (alarm: Omit<AlarmTap, "kind">, wallAt: string): Edit =>
  (plan) =>
    validateEdit(plan, { ...plan, alarms: [...(plan.alarms ?? []), { wallAt, ...alarm }] })
