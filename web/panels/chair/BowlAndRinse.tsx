import { heatOf, mixedTimes, standingOf } from "../../core/chair/chairRecord"
import { tap } from "../../session/chair/chairStore"
import { restStore } from "../../session/chair/restStore"
import { Ticking } from "../../session/chair/Ticking"
import { useService } from "../../session/chair/useChair"
import { useRest } from "../../session/chair/useRest"
import { endService } from "./chairActions"

/** The next bowl to mix, the common rinse, and the end when all is off. */
export function BowlAndRinse() {
  const mixed = useService((chair) => mixedTimes(chair).length) ?? 0
  const onNow = useService((chair) => standingOf(chair).onNow.length) ?? 0
  const isAllOff = useService((chair) => standingOf(chair).isAllOff)
  const isAllOn = useService((chair) => standingOf(chair).nextId === null)
  const bowls = useRest((rest) => rest.bowls.length) ?? 0
  const mix = useRest((rest) => rest.bowls.at(mixed)?.mix)
  return (
    <div className="touches">
      {!isAllOn && mix && (
        <button type="button" className="touch" onClick={() => tap({ kind: "mixed" })}>
          Mix {mix} now
          <small>
            bowl {mixed + 1} of {bowls}, for minute{" "}
            <Ticking of={restStore} words={({ rest }) => rest?.bowls.at(mixed)?.atMin ?? ""} />
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
      {(isAllOff || onNow === 0) && (
        <button type="button" className={isAllOff ? "touch giant" : "touch"} onClick={endService}>
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
    if (heat) return [chair.heatMin ?? 0, heat.offAtMs === null ? "on" : "over"]
    return [chair.heatMin ?? 0, standingOf(chair).nextId === null ? "to come" : "too soon"]
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
