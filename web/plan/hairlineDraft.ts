import { hairlineFault } from "../../geometry/head/hairlineFault"
import { type Head, makeHeadFromAxes } from "../../geometry/head/head"
import { capital } from "./capital"
import { movesOf } from "./hairlineMoves"
import { hairlineFaultWords } from "./hairlineProblems"
import type { HairlinePlan } from "./hairlineSchema"
import { headOf } from "./measured"
import type { Plan } from "./schema"

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
