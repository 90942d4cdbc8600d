import type { RestOfService } from "../fixes/restOfService"
import type { Chair } from "./chair"
import { contactMs, mixedTimes, recordsOf, standingOf } from "./chairRecord"

/** The places of the bowls, counted from 0, in the order they are to be mixed. */
export const mixingOrder = (planned: RestOfService["bowls"]): number[] =>
  [...planned.keys()].sort((a, b) => planned[a].atMin - planned[b].atMin)

/** The bowl to mix next, of those in the order they are to be mixed; null where none is needed any more. */
export function nextBowl(
  chair: Pick<Chair, "foils" | "log" | "bowls">,
  order: readonly number[],
): number | null {
  const mixed = mixedTimes(chair)
  if (!chair.foils.some(({ rootsLater }) => rootsLater))
    return standingOf(chair).nextId !== null && mixed.length < order.length ? mixed.length : null
  // A bowl for roots that go on later is mixed when they come due, whatever its place among the others.
  const records = recordsOf(chair)
  const isWaitedFor = (at: number) => {
    const { mix, foils } = chair.bowls?.[at] ?? { mix: "", foils: [] }
    return foils.some((id) => {
      const record = records.get(id)
      return record && record.offAtMs === null && contactMs(record, mix) === null
    })
  }
  return order.find((at) => mixed[at] === undefined && isWaitedFor(at)) ?? null
}
