import { heatOf, mixedTimes, recordsOf } from "../../service/chairRecord"
import { endService } from "./chairActions"
import { tap } from "./chairStore"
import { useService } from "./useChair"
import { useRest } from "./useRest"

/** The next bowl to mix, the common rinse, and the end when all is off. */
export function BowlAndRinse() {
  const bowls = useRest((rest) => rest.bowls) ?? []
  const mixed = useService((chair) => mixedTimes(chair).length) ?? 0
  const onNow = useService((chair) => countOn(chair)) ?? 0
  const isAllDone = useService((chair) =>
    [...recordsOf(chair).values()].every(({ offAtMs }) => offAtMs !== null),
  )
  const isAllOn = useService((chair) => [...recordsOf(chair).values()].every(({ onAtMs }) => onAtMs !== null))
  const bowl = isAllOn ? undefined : bowls[mixed]
  return (
    <div className="touches">
      {bowl && (
        <button type="button" className="touch" onClick={() => tap({ kind: "mixed" })}>
          Mix {bowl.mix} now
          <small>
            bowl {mixed + 1} of {bowls.length}, for minute {bowl.atMin}
          </small>
        </button>
      )}
      <HeatTap />
      {onNow > 0 && (
        <button type="button" className="touch" onClick={() => tap({ kind: "rinsed" })}>
          Rinse now
          <small>all {onNow} that are on</small>
        </button>
      )}
      {(isAllDone || onNow === 0) && (
        <button type="button" className={isAllDone ? "touch giant" : "touch"} onClick={endService}>
          End the service
        </button>
      )}
    </div>
  )
}

/** Heat comes once, when every foil is on; then off, a look, and cool. */
function HeatTap() {
  const [minutes, state] = useService((chair) => {
    const heat = heatOf(chair)
    const isAllOn = [...recordsOf(chair).values()].every(({ onAtMs }) => onAtMs !== null)
    if (heat) return [chair.heatMin ?? 0, heat.offAtMs === null ? "on" : "over"]
    return [chair.heatMin ?? 0, isAllOn ? "to come" : "too soon"]
  }) ?? [0, "over"]
  if (state === "on")
    return (
      <button type="button" className="touch strong" onClick={() => tap({ kind: "heat-off" })}>
        Heat off
        <small>then look and let cool</small>
      </button>
    )
  if (minutes === 0 || state !== "to come") return null
  return (
    <button type="button" className="touch" onClick={() => tap({ kind: "heat-on" })}>
      Heat on
      <small>{minutes} min, then look</small>
    </button>
  )
}

const countOn = (chair: Parameters<typeof recordsOf>[0]) =>
  [...recordsOf(chair).values()].filter(({ onAtMs, offAtMs }) => onAtMs !== null && offAtMs === null).length
