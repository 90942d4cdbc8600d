import { validateEdit } from "../../checks/validateEdit"
import type { Edit } from "../../document/edit"
import type { Plan } from "../../document/schema"

/** How much hair there is, how thick and how long. */
export const setHair =
  (change: Partial<Plan["hair"]>): Edit =>
  (plan) =>
    validateEdit(plan, { ...plan, hair: { ...plan.hair, ...change } })
