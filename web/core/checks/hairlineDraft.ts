import { hairlineFault } from "../../../geometry/scalp/hairlineFault"
import { type Head, makeHeadFromAxes } from "../../../geometry/scalp/head"
import { movesOf } from "../document/hairlineMoves"
import type { HairlinePlan } from "../document/hairlineSchema"
import type { Plan } from "../document/schema"
import { headOf } from "../figures/measured"
import { capital } from "../text/capital"
import { hairlineFaultWords } from "./hairlineProblems"

/** The head as a hairline in hand would make it, or why it cannot be. Not remembered: it is another one with the next move. */
export function headInHand(
  plan: Pick<Plan, "head">,
  hairline: HairlinePlan,
): { head: Head } | { refused: string } {
  const { axes, surface } = headOf(plan)
  const head = makeHeadFromAxes(axes, hairline.form, movesOf(hairline), surface)
  const found = hairlineFault(head)
  return found ? { refused: `${capital(hairlineFaultWords[found.fault])}.` } : { head }
}
