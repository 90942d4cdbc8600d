import type { ConflictRule } from "../schedule/conflicts"
import { findConflicts } from "../schedule/conflicts"
import type { Service } from "../schedule/scheduleInput"
import { readySpreadMin, solveOrder } from "../schedule/solveOrder"
import { planService } from "../schedule/timing"
import type { Fix } from "./fix"

/** The arrangement in which all foils come to the goal closest together, and how far apart they come now and then. */
export type Closest = { cure: Fix; nowMin: number; thenMin: number }

/** Null where the service as it is cannot be bettered, or bettering it would bring a conflict it has not got. */
export function closestTogether(service: Service): Closest | null {
  const after = solveOrder(service, { reorder: true, weaken: true })
  const [nowMin, thenMin] = [service, after].map(readySpreadMin)
  // Under a minute nobody at the basin could tell.
  if (nowMin - thenMin < 1) return null
  const before = rulesOf(service)
  if (rulesOf(after).some((rule) => !before.includes(rule))) return null
  return { cure: { code: "closest-together", costMin: 0, after, left: [] }, nowMin, thenMin }
}

const rulesOf = (service: Service): ConflictRule[] =>
  findConflicts(service, planService(service)).map(({ code }) => code)
