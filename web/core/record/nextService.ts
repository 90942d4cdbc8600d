import type { Plan } from "../document/schema"
import { nextVisit } from "../document/visits"
import { limits } from "../fields/limits"
import { lightenedAfter } from "./lightenedAfter"

/**
 * The plan of the next visit, on a day of the calendar: it brings what does not change, asks again what belongs to the day,
 * and knows what hair was lightened. What went wrong is never left behind.
 */
export function nextService(plan: Plan, day: string, zone: string): Plan {
  const lightened = lightenedAfter(plan, zone)
  const { regrowth: _, ...next } = withAlarms(nextVisit(plan, day), plan)
  return { ...next, ...(lightened.length > 0 && { lightened }) }
}

/** What the red button was touched for outside of the service goes with the service; where none was, it stays as it is. */
function withAlarms(next: Plan, { alarms = [] }: Plan): Plan {
  const last = next.earlier?.at(-1)
  if (alarms.length === 0) return next
  if (!last) return { ...next, alarms }
  const startMs = Date.parse(last.startedAt)
  const { low, high } = limits.serviceMs
  const log = [
    ...last.log,
    ...alarms.map(({ wallAt, ...alarm }) => ({
      tap: { kind: "alarm" as const, ...alarm },
      atMs: Math.min(high, Math.max(low, Date.parse(wallAt) - startMs)),
      wallAt,
      onAtMs: null,
      undone: false,
      note: null,
    })),
  ]
  return { ...next, earlier: [...(next.earlier ?? []).slice(0, -1), { ...last, log }] }
}
