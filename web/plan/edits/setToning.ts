import type { Edit } from "../edit"
import { newToning, type Toning } from "../toning"
import { accept } from "./accept"

/** What is toned with, the rest as it was. */
export const setToning =
  (change: Partial<Toning>): Edit =>
  (plan) =>
    accept(plan, { ...plan, toning: { ...newToning(), ...plan.toning, ...change } })
