import { useDeferredValue, useMemo } from "react"
import { type Clearance, clearanceOf } from "../../core/cautions/clearance"
import { isRunning } from "../chair/chairStore"
import { useChair } from "../chair/useChair"
import { nowHere } from "../nowHere"
import { usePlan } from "../usePlan"
import { keepStops } from "./keepStops"
import { useMinute } from "./useMinute"

// Whoever can see a stop can take it back.
keepStops()

/** Whether the open plan may be mixed, now: worked out anew by each change and by each minute, since answers age. */
export function useClearance(): Clearance {
  const plan = useDeferredValue(usePlan((open) => open))
  const minute = useMinute()
  const begunAt = useChair((state) =>
    state.live && state.planId === plan.id && isRunning(state) ? state.live.startedAt : null,
  )
  // biome-ignore lint/correctness/useExhaustiveDependencies: the minute is what makes now another one
  return useMemo(() => clearanceOf(plan, nowHere(), begunAt), [plan, minute, begunAt])
}
