import type { Edit } from "../edit"
import { accept } from "./accept"

/** What the red button was touched for while no service was going on. */
export const addAlarm =
  (what: string, wallAt: string): Edit =>
  (plan) =>
    accept(plan, { ...plan, alarms: [...(plan.alarms ?? []), { wallAt, what }] })
