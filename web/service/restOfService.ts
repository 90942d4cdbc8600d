import { type Conflict, findConflicts } from "./conflicts"
import type { Service, SoFar } from "./scheduleInput"
import { type BowlTimes, type FoilTimes, planService } from "./timing"

/** How the rest of a service stands: what is shown of it at the chair. Minutes from the first parting. */
export type RestOfService = {
  foils: readonly Pick<FoilTimes, "id" | "onAtMin" | "offAtMin">[]
  bowls: readonly Pick<BowlTimes, "mix" | "atMin">[]
  lastOnMin: number
  rinseMin: number
  conflicts: readonly Pick<Conflict, "rule" | "why">[]
}

/** The rest of a service planned again from what has really happened, and what can no longer be kept. */
export function restOfService(planned: Service, soFar: SoFar): RestOfService {
  const service = { ...planned, soFar }
  const schedule = planService(service)
  return {
    foils: schedule.foils.map(({ id, onAtMin, offAtMin }) => ({ id, onAtMin, offAtMin })),
    bowls: schedule.bowls.map(({ mix, atMin }) => ({ mix, atMin })),
    lastOnMin: schedule.lastOnMin,
    rinseMin: schedule.rinseMin,
    conflicts: findConflicts(service, schedule).map(({ rule, why }) => ({ rule, why })),
  }
}
