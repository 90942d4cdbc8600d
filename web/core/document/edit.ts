import type { Plan, Refusal } from "./schema"

export type { Edit, Refusal } from "./schema"

export const isRefusal = (result: Plan | Refusal): result is Refusal => "refused" in result
