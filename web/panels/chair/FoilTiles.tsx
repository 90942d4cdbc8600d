import { memo } from "react"
import type { Chair } from "../../core/chair/chair"
import { type FoilRecord, standingOf } from "../../core/chair/chairRecord"
import { isOver, minutesOn } from "../../core/chair/chairTiles"
import { chairStore } from "../../session/chair/chairStore"
import { type RestState, restStore } from "../../session/chair/restStore"
import { Ticking } from "../../session/chair/Ticking"
import { useService } from "../../session/chair/useChair"
import { useWords } from "../../session/words"
import type { ChairWords } from "../../words/en/chair/chair"

type Props = { chosen: string | null; onChoose: (foil: string) => void }

/** Every foil that is on, with its minutes; the chosen one is inked. */
export const FoilTiles = memo(function FoilTiles({ chosen, onChoose }: Props) {
  const onNow = useService((chair) => standingOf(chair).onNow) ?? []
  const past = useService(pastNow) ?? []
  const w = useWords().chair.floor
  if (onNow.length === 0) return <p className="large">{w.noneOn}</p>
  return (
    <ul className="tiles" aria-label={w.foilsOn}>
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
  const w = useWords().chair.floor
  return (
    <li>
      <button
        type="button"
        className={isPast ? "tile over" : "tile"}
        aria-pressed={isChosen}
        onClick={() => onChoose(id)}
      >
        <b>
          <span className="unseen">{w.foil} </span>
          {mapNumber}
        </b>
        <span className="tile-min">
          <Ticking of={chairStore} words={({ live }) => minutesOn(on, live?.chair.elapsedMs ?? 0)} />{" "}
          {w.minutes}
        </span>
        <small>
          {isPast ? (
            w.offNow(on.limitMs / 60_000)
          ) : isTapped ? (
            <Ticking of={restStore} words={(state) => offWords(state, id, w)} />
          ) : (
            w.countedFromEarliest
          )}
        </small>
      </button>
    </li>
  )
})

function offWords({ rest }: RestState, id: string, { offAbout }: ChairWords["floor"]): string {
  const atMin = rest?.offAtMin[id]
  return atMin === undefined ? "" : offAbout(atMin)
}
