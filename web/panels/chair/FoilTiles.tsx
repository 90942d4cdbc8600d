import { memo } from "react"
import { type FoilOnNow, foilsOnNow } from "../../service/chairTiles"
import { useService } from "./useChair"
import { useRest } from "./useRest"

type Props = { chosen: string | null; onChoose: (foil: string) => void }

/** Every foil that is on, with its minutes; the chosen one is inked. */
export const FoilTiles = memo(function FoilTiles({ chosen, onChoose }: Props) {
  // One pass a second over all foils, as plain words: only a tile that says something else is drawn again.
  const tiles = useService((chair) => foilsOnNow(chair).map((foil) => JSON.stringify(foil))) ?? []
  const offAtMin = useRest((rest) => rest.offAtMin)
  if (tiles.length === 0) return <p className="large">Nothing is on.</p>
  return (
    <ul className="tiles" aria-label="Foils that are on">
      {tiles
        .map((tile): FoilOnNow => JSON.parse(tile))
        .map((foil) => (
          <Tile
            key={foil.id}
            {...foil}
            isChosen={foil.id === chosen}
            onChoose={onChoose}
            offAtMin={offAtMin?.[foil.id]}
          />
        ))}
    </ul>
  )
})

type TileProps = FoilOnNow & {
  isChosen: boolean
  onChoose: (foil: string) => void
  offAtMin: number | undefined
}

const Tile = memo(function Tile({ id, number, onMin, isChosen, isOver, onChoose, ...rest }: TileProps) {
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
        <small>{isOver ? `never past ${rest.limitMin}: off now` : tileWords(rest)}</small>
      </button>
    </li>
  )
})

function tileWords({ offAtMin, isCounted }: Pick<TileProps, "offAtMin" | "isCounted">) {
  if (isCounted) return "counted from earliest"
  return offAtMin === undefined ? "" : `off at about ${offAtMin}:00`
}
