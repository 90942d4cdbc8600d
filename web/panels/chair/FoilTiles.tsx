import { memo } from "react"
import type { Chair } from "../../core/chair/chair"
import { type FoilRecord, standingOf } from "../../core/chair/chairRecord"
import { isOver, minutesOn } from "../../core/chair/chairTiles"
import type { Piece } from "../../core/kinds/kindRecord"
import { pieceOf } from "../../core/kinds/kindRecords"
import { chairStore } from "../../session/chair/chairStore"
import { Ticking } from "../../session/chair/Ticking"
import { useService } from "../../session/chair/useChair"
import { useWords } from "../../session/words"
import type { ChairWords } from "../../words/en/chair/chair"

type Props = { chosen: string | null; onChoose: (foil: string) => void }

/** Every foil that is on, with its minutes; the chosen one is inked. */
export const FoilTiles = memo(function FoilTiles({ chosen, onChoose }: Props) {
  const onNow = useService((chair) => standingOf(chair).onNow) ?? []
  const past = useService(pastNow) ?? []
  const panels = useService(panelsOf) ?? []
  const all = useService(({ foils }) => pieceOf(foils)) ?? "foil"
  const w = useWords().chair.floor
  if (onNow.length === 0) return <p className="large">{w.noneOn(all)}</p>
  return (
    <ul className="tiles" aria-label={w.foilsOn(all)}>
      {onNow.map(({ id, mapNumber, onAtMs, limitMs, plannedMs, isTapped, mustOff, rootsLater }) => (
        <Tile
          key={id}
          {...{ id, mapNumber, onAtMs, limitMs, plannedMs, isTapped, mustOff, onChoose }}
          piece={panels.includes(id) ? "panel" : "foil"}
          isRootsToCome={rootsLater?.onAtMs === null}
          isChosen={id === chosen}
          isPast={past.includes(id)}
        />
      ))}
    </ul>
  )
})

const pastNow = (chair: Chair) =>
  standingOf(chair)
    .onNow.filter((foil) => isOver(foil, chair.elapsedMs))
    .map(({ id }) => id)

const panelsOf = (chair: Chair) =>
  chair.foils.filter((foil) => pieceOf([foil]) === "panel").map(({ id }) => id)

type TileProps = Pick<
  FoilRecord,
  "id" | "mapNumber" | "onAtMs" | "limitMs" | "plannedMs" | "isTapped" | "mustOff"
> & {
  piece: Piece
  isRootsToCome: boolean
  isChosen: boolean
  isPast: boolean
  onChoose: (foil: string) => void
}

const Tile = memo(function Tile({
  id,
  piece,
  mapNumber,
  isTapped,
  mustOff,
  isRootsToCome,
  isChosen,
  isPast,
  onChoose,
  ...on
}: TileProps) {
  const w = useWords().chair.floor
  return (
    <li>
      <button
        type="button"
        className={isPast || mustOff === "danger" ? "tile over" : mustOff ? "tile off-now" : "tile"}
        aria-pressed={isChosen}
        onClick={() => onChoose(id)}
      >
        <b>
          <span className="unseen">{w.foil(piece)} </span>
          {mapNumber}
        </b>
        <span className="tile-min">
          <Ticking of={chairStore} words={({ live }) => minutesOn(on, live?.chair.elapsedMs ?? 0)} />{" "}
          {w.minutes}
        </span>
        <small>
          {isPast ? (
            w.offNow(on.limitMs / 60_000)
          ) : mustOff ? (
            w.offStop
          ) : isRootsToCome ? (
            w.rootsToCome
          ) : isTapped ? (
            <Ticking of={chairStore} words={({ live }) => leftWords(on, live?.chair.elapsedMs ?? 0, w)} />
          ) : (
            w.countedFromEarliest
          )}
        </small>
      </button>
    </li>
  )
})

type OnSince = Pick<FoilRecord, "onAtMs" | "plannedMs">

/** Time left to the planned minute: it counts down, and then up; it never slides ahead. */
function leftWords({ onAtMs, plannedMs }: OnSince, elapsedMs: number, w: ChairWords["floor"]): string {
  if (onAtMs === null || plannedMs === null) return ""
  const leftMs = onAtMs + plannedMs - elapsedMs
  return leftMs >= 0 ? w.offIn(leftMs) : w.offOver(-leftMs)
}
