import { hairlineFault } from "../../../geometry/scalp/hairlineFault"
import { type Head, makeHeadFromAxes } from "../../../geometry/scalp/head"
import { refuse } from "../document/edit"
import { movesOf } from "../document/hairlineMoves"
import type { HairlinePlan } from "../document/hairlineSchema"
import type { Refusal } from "../document/refusal"
import type { Plan } from "../document/schema"
import { headOf } from "../figures/measured"

/** The head as a hairline in hand would make it, or why it cannot be. Not remembered: it is another one with the next move. */
export function headInHand(plan: Pick<Plan, "head">, hairline: HairlinePlan): { head: Head } | Refusal {
  const { axes, surface } = headOf(plan)
  const head = makeHeadFromAxes(axes, hairline.form, movesOf(hairline), surface)
  const found = hairlineFault(head)
  return found ? refuse({ code: "hairline", fault: found.fault }) : { head }
}
