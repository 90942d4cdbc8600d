import { recordsOf } from "../../service/liveService"
import type { Schedule } from "../../service/timing"
import { useService } from "./useChair"

type Props = { chosen: string | null; onChoose: (foil: string) => void; schedule: Schedule | null }

/** Every foil that is on, with its minutes; the chosen one is inked. */
export function FoilTiles({ chosen, onChoose, schedule }: Props) {
  const ids =
    useService((chair) =>
      [...recordsOf(chair).values()].flatMap(({ id, onAtMs, offAtMs }) =>
        onAtMs !== null && offAtMs === null ? [id] : [],
      ),
    ) ?? []
  if (ids.length === 0) return <p className="large">Nothing is on.</p>
  return (
    <ul className="tiles" aria-label="Foils that are on">
      {ids.map((id) => (
        <Tile
          key={id}
          id={id}
          isChosen={id === chosen}
          onChoose={onChoose}
          offAtMin={offAtOf(schedule, id)}
        />
      ))}
    </ul>
  )
}

const offAtOf = (schedule: Schedule | null, id: string) =>
  schedule?.foils.find((times) => times.id === id)?.offAtMin

type TileProps = {
  id: string
  isChosen: boolean
  onChoose: (foil: string) => void
  offAtMin: number | undefined
}

function Tile({ id, isChosen, onChoose, offAtMin }: TileProps) {
  const [number, onMin, limitMin, isOver, isCounted] = useService((chair) => {
    const record = recordsOf(chair).get(id)
    const onMs = chair.elapsedMs - (record?.onAtMs ?? chair.elapsedMs)
    const limitMs = record?.limitMs ?? 0
    const name = chair.foils.find((foil) => foil.id === id)?.mapNumber ?? 0
    return [name, Math.floor(onMs / 60_000), limitMs / 60_000, onMs >= limitMs, record?.isTapped === false]
  }) ?? [0, 0, 0, false, false]
  return (
    <li>
      <button
        type="button"
        className={isOver ? "tile over" : "tile"}
        aria-pressed={isChosen}
        onClick={() => onChoose(id)}
      >
        <b>
          <span className="unseen">Foil </span>
          {number}
        </b>
        <span className="tile-min">{onMin} min</span>
        <small>{isOver ? `never past ${limitMin}: off now` : tileWords(offAtMin, isCounted)}</small>
      </button>
    </li>
  )
}

function tileWords(offAtMin: number | undefined, isCounted: boolean) {
  if (isCounted) return "counted from earliest"
  return offAtMin === undefined ? "" : `off about ${Math.round(offAtMin)}`
}
