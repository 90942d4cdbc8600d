import { useMemo } from "react"
import { soFarOf } from "../../service/chairDue"
import type { Conflict } from "../../service/conflicts"
import { findConflicts } from "../../service/conflicts"
import { replanned } from "../../service/liveService"
import type { TimedPlan } from "../../service/timedPlan"
import type { Schedule } from "../../service/timing"
import { chairStore } from "./chairStore"
import { useChair } from "./useChair"

const everyMs = 20_000

/** The rest of the service as it stands after the last tap, and what can no longer be kept; again every 20 seconds. */
export function useReplanned(timed: TimedPlan): {
  schedule: Schedule | null
  conflicts: readonly Conflict[]
} {
  const log = useChair(({ live }) => live?.chair.log)
  const third = useChair(({ live }) => Math.floor((live?.chair.elapsedMs ?? 0) / everyMs))
  // biome-ignore lint/correctness/useExhaustiveDependencies: a tap or a third of a minute is what makes the plan another
  return useMemo(() => {
    const chair = chairStore.getState().live?.chair
    const schedule = chair ? replanned(timed, chair) : null
    if (!chair || !schedule || !timed.ok) return { schedule: null, conflicts: [] }
    return { schedule, conflicts: findConflicts({ ...timed.service, soFar: soFarOf(chair) }, schedule) }
  }, [timed, log, third])
}
