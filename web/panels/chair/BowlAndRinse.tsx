import { useState } from "react"
import { type Holds, holdsMix } from "../../core/cautions/clearance"
import { heatOf, notReadyOf, rootsToCome, standingOf } from "../../core/chair/chairRecord"
import { mixesOn } from "../../core/chair/inHand"
import { mixingOrder, nextBowl } from "../../core/chair/nextBowl"
import { stageOf } from "../../core/chair/tonerTimes"
import { pieceOf } from "../../core/kinds/kindRecords"
import { tap } from "../../session/chair/chairStore"
import { restStore } from "../../session/chair/restStore"
import { Ticking } from "../../session/chair/Ticking"
import { useService } from "../../session/chair/useChair"
import { useRest } from "../../session/chair/useRest"
import { useWords } from "../../session/words"
import { endService } from "./chairActions"

/** The next bowl to mix, held by a stop or an open question that came up since; the common rinse, and the end when all is off. */
export function BowlAndRinse({ holds }: { holds: Holds }) {
  const onNow = useService((chair) => standingOf(chair).onNow.length) ?? 0
  const isAllOff = useService((chair) => standingOf(chair).isAllOff)
  const stage = useService((chair) => stageOf(chair, standingOf(chair).isAllOff))
  const order = useRest(({ bowls }) => mixingOrder(bowls)) ?? noBowls
  const next = useService((chair) => nextBowl(chair, order)) ?? null
  const mix = useRest(({ bowls }) => (next === null ? null : bowls.at(next)?.mix)) ?? null
  const isRootsLater = useService(({ foils }) => foils.some(({ rootsLater }) => rootsLater)) ?? false
  const w = useWords().chair.floor
  return (
    <div className="touches">
      {next !== null && mix !== null && (
        <button
          type="button"
          className="touch"
          disabled={holdsMix(holds, mix)}
          onClick={() => tap({ kind: "mixed", ...(isRootsLater && { bowl: next }) })}
        >
          {w.mixNow(mix)}
          <small>
            {w.bowlFor({ bowl: next + 1, of: order.length })}{" "}
            <Ticking of={restStore} words={({ rest }) => rest?.bowls.at(next)?.atMin ?? ""} />
          </small>
        </button>
      )}
      <HeatTap holds={holds} />
      {onNow > 0 && <Rinse onNow={onNow} />}
      {(isAllOff || onNow === 0) && (
        <button type="button" className={stage === "finished" ? "touch giant" : "touch"} onClick={endService}>
          {w.end}
        </button>
      )}
    </div>
  )
}

const noBowls: readonly number[] = []

/** All that is on rinsed at once; asks once where some have not had their planned time. */
function Rinse({ onNow }: { onNow: number }) {
  const w = useWords().chair.floor
  const [asks, ask] = useState(false)
  const early = useService((chair) => notReadyOf(chair)) ?? []
  const piece =
    useService((chair) => pieceOf(chair.foils.filter(({ mapNumber }) => early.includes(mapNumber)))) ?? "foil"
  const rinse = () => {
    ask(false)
    tap({ kind: "rinsed" })
  }
  if (!asks || early.length === 0)
    return (
      <button type="button" className="touch" onClick={() => (early.length > 0 ? ask(true) : rinse())}>
        {w.rinseNow}
        <small>{w.allOfThem(onNow)}</small>
      </button>
    )
  return (
    <div className="asks" role="alert">
      <p className="large">{w.notReady(early, piece)}</p>
      <div className="touches">
        <button type="button" className="touch" onClick={() => ask(false)}>
          {w.notYet}
        </button>
        <button type="button" className="touch strong" onClick={rinse}>
          {w.rinseAll}
        </button>
      </div>
    </div>
  )
}

/** Heat comes once, when every foil is on, over all of them; then off, a look, and cool. */
function HeatTap({ holds }: { holds: Holds }) {
  const mixes = useService((chair) => mixesOn(chair)) ?? []
  const [minutes, state] = useService((chair) => {
    const heat = heatOf(chair)
    if (heat) return [chair.heatMin ?? 0, heat.offAtMs === null ? "on" : "over"]
    return [
      chair.heatMin ?? 0,
      standingOf(chair).nextId === null && rootsToCome(chair).length === 0 ? "to come" : "too soon",
    ]
  }) ?? [0, "over"]
  const w = useWords().chair.floor
  if (state === "on")
    return (
      <button type="button" className="touch strong" onClick={() => tap({ kind: "heat-off" })}>
        {w.heatOff}
        <small>{w.thenCheck}</small>
      </button>
    )
  if (minutes === 0 || state !== "to come") return null
  return (
    <button
      type="button"
      className="touch"
      disabled={holdsMix(holds, ...mixes)}
      onClick={() => tap({ kind: "heat-on" })}
    >
      {w.heatOn}
      <small>{w.heatFor(minutes)}</small>
    </button>
  )
}
