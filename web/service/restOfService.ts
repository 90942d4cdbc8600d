import { type Conflict, findConflicts } from "./conflicts"
import type { Service, SoFar } from "./scheduleInput"
import { type BowlTimes, planService } from "./timing"

/** How the rest of a service stands, as finely as it is shown at the chair. Minutes from the first parting. */
export type RestOfService = {
  /** Of every foil still to come, to a tenth: whether one is late goes by it. */
  onAtMin: Readonly<Record<string, number>>
  /** Of every foil that is on, whole minutes. */
  offAtMin: Readonly<Record<string, number>>
  bowls: readonly Pick<BowlTimes, "mix" | "atMin">[]
  lastOnMin: number
  rinseMin: number
  conflicts: readonly Pick<Conflict, "rule" | "why">[]
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
    conflicts: findConflicts(service, schedule).map(({ rule, why }) => ({ rule, why })),
  }
}

/** The news, with every part that says what was known before left as it was: nothing is drawn again for it. */
export function withNews(before: RestOfService | null, news: RestOfService): RestOfService {
  if (!before) return news
  const same = <Part>(known: Part, part: Part) =>
    JSON.stringify(known) === JSON.stringify(part) ? known : part
  const after = {
    ...news,
    onAtMin: same(before.onAtMin, news.onAtMin),
    offAtMin: same(before.offAtMin, news.offAtMin),
    bowls: same(before.bowls, news.bowls),
    conflicts: same(before.conflicts, news.conflicts),
  }
  return parts.every((part) => after[part] === before[part]) ? before : after
}

const parts = ["onAtMin", "offAtMin", "bowls", "lastOnMin", "rinseMin", "conflicts"] as const
