import { type Conflict, findConflicts } from "../schedule/conflicts"
import type { Service, SoFar } from "../schedule/scheduleInput"
import { type BowlTimes, planService } from "../schedule/timing"

/** How the rest of a service stands, as finely as it is shown at the chair. Minutes from the first parting. */
export type RestOfService = {
  /** Of every foil still to come, to a tenth: whether one is late goes by it. */
  onAtMin: Readonly<Record<string, number>>
  /** Of every foil that is on, whole minutes. */
  offAtMin: Readonly<Record<string, number>>
  bowls: readonly Pick<BowlTimes, "mix" | "atMin">[]
  lastOnMin: number
  rinseMin: number
  conflicts: readonly Conflict[]
}

/** The rest of a service planned again from what has really happened, and what can no longer be kept. */
export function restOfService(planned: Service, soFar: SoFar): RestOfService {
  const service = { ...planned, soFar }
  const schedule = planService(service)
  const isOn = ({ id }: { id: string }) => soFar.onAtMin[id] !== undefined
  const on = schedule.foils.filter((foil) => isOn(foil) && soFar.offAtMin[foil.id] === undefined)
  const toCome = schedule.foils.filter((foil) => !isOn(foil))
  return {
    onAtMin: Object.fromEntries(toCome.map(({ id, onAtMin }) => [id, Math.round(onAtMin * 10) / 10])),
    offAtMin: Object.fromEntries(on.map(({ id, offAtMin }) => [id, Math.round(offAtMin)])),
    bowls: schedule.bowls.map(({ mix, atMin }) => ({ mix, atMin: Math.round(atMin) })),
    lastOnMin: Math.round(schedule.lastOnMin),
    rinseMin: Math.round(schedule.rinseMin),
    conflicts: findConflicts(service, schedule).map(wholeMinutes),
  }
}

/** As finely as it is shown: what is only a fraction of a minute later is no news. */
const wholeMinutes = (conflict: Conflict): Conflict =>
  Object.fromEntries(
    Object.entries(conflict).map(([name, value]) => [
      name,
      typeof value === "number" ? Math.round(value) : value,
    ]),
  ) as Conflict

/** What another plan of the same service says differently: all that has to travel, and all that is drawn again. */
export function newsSince(before: RestOfService | null, after: RestOfService): Partial<RestOfService> {
  if (!before) return after
  const isNews = (part: keyof RestOfService) => JSON.stringify(before[part]) !== JSON.stringify(after[part])
  return Object.fromEntries(parts.filter(isNews).map((part) => [part, after[part]]))
}

const parts = ["onAtMin", "offAtMin", "bowls", "lastOnMin", "rinseMin", "conflicts"] as const
