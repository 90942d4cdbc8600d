import type { Edit } from "../edit"
import type { Plan } from "../schema"
import { accept } from "./accept"

/** How much hair there is, how thick and how long. */
export const setHair =
  (change: Partial<Plan["hair"]>): Edit =>
  (plan) =>
    accept(plan, { ...plan, hair: { ...plan.hair, ...change } })
