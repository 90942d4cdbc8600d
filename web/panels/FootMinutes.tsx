import { useEffect, useState } from "react"
import type { Plan } from "../plan/schema"
import { timedPlan } from "../service/timedPlan"

/** A plan is timed when it has not changed for this long, so that the clock never slows the hand. */
const restMs = 400

/** From the first foil to the last off, minutes; the last known until the plan has come to rest. */
export function FootMinutes({ plan }: { plan: Plan }) {
  const [minutes, setMinutes] = useState<number | null>(null)
  useEffect(() => {
    const rested = setTimeout(() => {
      const timed = timedPlan(plan)
      setMinutes(timed.ok ? Math.round(timed.schedule.rinseMin) : null)
    }, restMs)
    return () => clearTimeout(rested)
  }, [plan])
  if (minutes === null) return null
  return (
    <span className="figure">
      <b>{minutes} min</b> first foil to last off
    </span>
  )
}
