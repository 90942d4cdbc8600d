import type { ConflictRule } from "./conflicts"
import { findConflicts } from "./conflicts"
import type { Cure } from "./cures"
import type { Service } from "./scheduleInput"
import { readySpreadMin, solveOrder } from "./solveOrder"
import { planService } from "./timing"

/** The arrangement in which all foils come to the goal closest together, and how far apart they come now and then. */
export type Closest = { cure: Cure; nowMin: number; thenMin: number }

/** Null where the service as it is cannot be bettered, or bettering it would bring a conflict it has not got. */
export function closestTogether(service: Service): Closest | null {
  const after = solveOrder(service, { reorder: true, weaken: true })
  const [nowMin, thenMin] = [service, after].map(readySpreadMin)
  // Under a minute nobody at the basin could tell.
  if (nowMin - thenMin < 1) return null
  const before = rulesOf(service)
  if (rulesOf(after).some((rule) => !before.includes(rule))) return null
  const label = "Bring the foils to the goal closest together"
  return { cure: { kind: "order-and-strength", label, costMin: 0, after, left: [] }, nowMin, thenMin }
}

const rulesOf = (service: Service): ConflictRule[] =>
  findConflicts(service, planService(service)).map(({ rule }) => rule)
