import type { Refusal, RefusalCode } from "./refusal"
import type { Plan } from "./schema"

/** A change of the plan: a pure function to the plan after it, or the reason why it cannot be. */
export type Edit = (plan: Plan) => Plan | Refusal

export const isRefusal = (result: Plan | Refusal): result is Refusal => "refused" in result

export const refuse = (refused: RefusalCode): Refusal => ({ refused })
