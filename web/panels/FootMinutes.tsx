import { useEffect, useState } from "react"
import { draftStore } from "../plan/draftStore"
import type { Plan } from "../plan/schema"
import { timedPlan } from "../service/timedPlan"

/** A plan is timed when it has not changed for this long and no stroke is in hand, so that the clock never slows the hand. */
const restMs = 400

/** From the first foil to the last off, minutes; the last known until the plan has come to rest. */
export function FootMinutes({ plan }: { plan: Plan }) {
  const [minutes, setMinutes] = useState<number | null>(null)
  useEffect(() => {
    let rested = setTimeout(time, restMs)
    function time() {
      if (draftStore.getState().draft) {
        rested = setTimeout(time, restMs)
        return
      }
      const timed = timedPlan(plan)
      setMinutes(timed.ok ? Math.round(timed.schedule.rinseMin) : null)
    }
    return () => clearTimeout(rested)
  }, [plan])
  if (minutes === null) return null
  return (
    <span className="figure">
      <b>{minutes} min</b> first foil to last off
    </span>
  )
}
