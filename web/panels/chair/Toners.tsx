import { type Holds, holdsMix } from "../../core/cautions/clearance"
import { tonerIds } from "../../core/cautions/rules/rule"
import { tonerTimes } from "../../core/chair/tonerTimes"
import type { ToneZoneName } from "../../core/document/serviceRecord"
import { chairStore, tap } from "../../session/chair/chairStore"
import { Ticking } from "../../session/chair/Ticking"
import { useService } from "../../session/chair/useChair"
import { useWords } from "../../session/words"

/** After the rinse: each toner by its zone, on, checked and rinsed off, with a clock of its own. */
export function Toners({ holds }: { holds: Holds }) {
  const zones = useService((chair) => (chair.toners ?? []).map(({ zone }) => zone)) ?? []
  const w = useWords().chair.floor
  return (
    <section className="toners" aria-label={w.after}>
      <h2>{w.after}</h2>
      {zones.map((zone) => (
        <Toner key={zone} zone={zone} isHeld={holdsMix(holds, mixOf(zone))} />
      ))}
    </section>
  )
}

/** The name that stops know the toner of a zone by. */
const mixOf = (zone: ToneZoneName) => (zone === "root-melt" ? tonerIds.rootShade : tonerIds.toner)

/** One that is on goes on; one that is to come waits while a stop or an open question holds it. */
function Toner({ zone, isHeld }: { zone: ToneZoneName; isHeld: boolean }) {
  const [onAtMs, offAtMs, plannedMin, product] = useService((chair) => {
    const toner = tonerTimes(chair).find((each) => each.zone === zone)
    return [
      toner?.onAtMs ?? null,
      toner?.offAtMs ?? null,
      toner?.plannedMin ?? 0,
      toner?.product ?? null,
    ] as const
  }) ?? [null, null, 0, null]
  const { floor: w, calls } = useWords().chair
  const name = calls.toners[zone]
  if (offAtMs !== null)
    return (
      <p className="toner-done">
        {name}: {w.tonerDone}
      </p>
    )
  if (onAtMs === null)
    return (
      <button
        type="button"
        className="touch giant"
        disabled={isHeld}
        onClick={() => tap({ kind: "toner-on", zone })}
      >
        {w.tonerOn(name)}
        <small>{w.tonerPlan({ product, minutes: plannedMin })}</small>
      </button>
    )
  return (
    <fieldset className="touches toner-on">
      <legend className="label">{name}</legend>
      <p className="large">
        <Ticking
          of={chairStore}
          words={({ live }) => w.tonerTime({ onMs: (live?.chair.elapsedMs ?? 0) - onAtMs, plannedMin })}
        />
      </p>
      <button type="button" className="touch" onClick={() => tap({ kind: "toner-checked", zone })}>
        {w.tonerChecked}
      </button>
      <button type="button" className="touch strong" onClick={() => tap({ kind: "toner-off", zone })}>
        {w.tonerOff}
      </button>
    </fieldset>
  )
}
