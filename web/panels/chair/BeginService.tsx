import type { Plan } from "../../core/document/schema"
import type { TimedPlan } from "../../core/schedule/timedPlan"
import { useChair } from "../../session/chair/useChair"
import { useClearance } from "../../session/clearance/useClearance"
import { ChairClearance } from "../clearance/ChairClearance"
import { startService } from "./chairActions"

type Props = {
  plan: Plan
  timed: Extract<TimedPlan, { ok: true }>
  words: string
  className: string
}

/** What holds the plan, and the button that starts its clock: off until nothing does and this window holds the chair. */
export function BeginService({ plan, timed, words, className }: Props) {
  const hold = useChair((state) => state.hold)
  const clearance = useClearance()
  return (
    <>
      <ChairClearance told={clearance} />
      <button
        type="button"
        className={className}
        disabled={clearance.state !== "cleared" || hold !== "held"}
        onClick={() => startService(plan, timed)}
      >
        {words}
      </button>
    </>
  )
}
