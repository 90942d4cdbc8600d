import { useEffect } from "react"
import { useStore } from "zustand"
import { useShallow } from "zustand/react/shallow"
import type { RestOfService } from "../../core/fixes/restOfService"
import type { TimedPlan } from "../../core/schedule/timedPlan"
import { followRest, restStore } from "./restStore"

/** A part of the rest of the service, as it was last planned. */
export const useRest = <T>(part: (rest: RestOfService) => T): T | null =>
  useStore(
    restStore,
    useShallow(({ rest }) => (rest ? part(rest) : null)),
  )

/** Keeps the rest of the service planned for as long as it is shown. */
export function useRestKeeper(timed: TimedPlan) {
  const service = timed.ok ? timed.service : null
  useEffect(() => (service ? followRest(service) : undefined), [service])
}
