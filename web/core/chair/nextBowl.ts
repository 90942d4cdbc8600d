import type { RestOfService } from "../fixes/restOfService"
import type { Chair } from "./chair"
import { contactMs, mixedTimes, recordsOf, standingOf } from "./chairRecord"

/** The bowl to mix next, counted from 0; null where none is needed any more. */
export function nextBowl(
  chair: Pick<Chair, "foils" | "log" | "bowls">,
  planned: RestOfService["bowls"],
): number | null {
  const mixed = mixedTimes(chair)
  if (!chair.foils.some(({ rootsLater }) => rootsLater))
    return standingOf(chair).nextId === null || !planned[mixed.length] ? null : mixed.length
  // A bowl for roots that go on later is mixed when they come due, whatever its place among the others.
  const records = recordsOf(chair)
  const waits = (id: string, mix: string) => {
    const record = records.get(id)
    return record && record.offAtMs === null && contactMs(record, mix) === null
  }
  const open = (chair.bowls ?? []).flatMap(({ mix, foils }, at) =>
    mixed[at] === undefined && planned[at] && foils.some((id) => waits(id, mix)) ? [at] : [],
  )
  return open.toSorted((a, b) => planned[a].atMin - planned[b].atMin)[0] ?? null
}
