import { memo } from "react"
import type { Chair } from "../../core/chair/chair"
import { type FoilRecord, standingOf } from "../../core/chair/chairRecord"
import { isOver, minutesOn } from "../../core/chair/chairTiles"
import { chairStore } from "../../session/chair/chairStore"
import { type RestState, restStore } from "../../session/chair/restStore"
import { Ticking } from "../../session/chair/Ticking"
import { useService } from "../../session/chair/useChair"

type Props = { chosen: string | null; onChoose: (foil: string) => void }

/** Every foil that is on, with its minutes; the chosen one is inked. */
export const FoilTiles = memo(function FoilTiles({ chosen, onChoose }: Props) {
  const onNow = useService((chair) => standingOf(chair).onNow) ?? []
  const past = useService(pastNow) ?? []
  if (onNow.length === 0) return <p className="large">Nothing is on.</p>
  return (
    <ul className="tiles" aria-label="Foils that are on">
      {onNow.map(({ id, mapNumber, onAtMs, limitMs, isTapped }) => (
        <Tile
          key={id}
          {...{ id, mapNumber, onAtMs, limitMs, isTapped, onChoose }}
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

type TileProps = Pick<FoilRecord, "id" | "mapNumber" | "onAtMs" | "limitMs" | "isTapped"> & {
  isChosen: boolean
  isPast: boolean
  onChoose: (foil: string) => void
}

const Tile = memo(function Tile({ id, mapNumber, isTapped, isChosen, isPast, onChoose, ...on }: TileProps) {
  return (
    <li>
      <button
        type="button"
        className={isPast ? "tile over" : "tile"}
        aria-pressed={isChosen}
        onClick={() => onChoose(id)}
      >
        <b>
          <span className="unseen">Foil </span>
          {mapNumber}
        </b>
        <span className="tile-min">
          <Ticking of={chairStore} words={({ live }) => minutesOn(on, live?.chair.elapsedMs ?? 0)} /> min
        </span>
        <small>
          {isPast ? (
            `never past ${on.limitMs / 60_000}: off now`
          ) : isTapped ? (
            <Ticking of={restStore} words={(state) => offWords(state, id)} />
          ) : (
            "counted from earliest"
          )}
        </small>
      </button>
    </li>
  )
})

function offWords({ rest }: RestState, id: string): string {
  const atMin = rest?.offAtMin[id]
  return atMin === undefined ? "" : `off at about ${atMin}:00`
}
