import type { Chair } from "./chairClock"
import { recordsOf } from "./chairRecord"

/** A foil that is on, in whole minutes. */
export type FoilOnNow = {
  id: string
  number: number
  onMin: number
  limitMin: number
  isOver: boolean
  /** Its tap was missed: the minutes count from the earliest it can have been. */
  isCounted: boolean
}

/** Every foil that is on, in order of application. */
export function foilsOnNow(chair: Chair): FoilOnNow[] {
  const records = recordsOf(chair)
  return chair.foils.flatMap(({ id, mapNumber: number }) => {
    const record = records.get(id)
    if (!record || record.onAtMs === null || record.offAtMs !== null) return []
    const onMs = chair.elapsedMs - record.onAtMs
    const { limitMs, isTapped } = record
    const [onMin, limitMin] = [Math.floor(onMs / 60_000), limitMs / 60_000]
    return [{ id, number, onMin, limitMin, isOver: onMs >= limitMs, isCounted: !isTapped }]
  })
}
