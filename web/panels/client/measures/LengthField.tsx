import { useId } from "react"
import { lengthCm } from "../../../../presets/client/hairTypes"
import { limits } from "../../../core/fields/limits"
import { useWords } from "../../../session/words"
import type { Words } from "../../../words/en/words"
import { NumberField } from "../../fields/NumberField"
import { wordFor } from "./wordForFigure"

type Place = keyof typeof lengthCm

const places = (Object.keys(lengthCm) as Place[]).sort((a, b) => lengthCm[a].value - lengthCm[b].value)

/** A length that no word stands for, told by the words on either side of it. */
function between(cm: number, said: Words["client"]["measures"]): string {
  const after = places.findIndex((place) => lengthCm[place].value > cm)
  if (after === 0) return said.lengthAbove(places[0])
  return after < 0
    ? said.lengthBelow(places[places.length - 1])
    : said.lengthBetween(places[after - 1], places[after])
}

type Props = { name: string; exactly: string; cm: number; onCommit: (cm: number) => void }

/** How long the hair is at one place: by where it falls, or in centimetres. */
export function LengthField({ name, exactly, cm, onCommit }: Props) {
  const { client, common } = useWords()
  const said = client.measures
  const id = useId()
  return (
    <div className="length">
      <div className="field">
        <label className="name" htmlFor={id}>
          {name}
        </label>
        <select
          id={id}
          value={wordFor(lengthCm, cm) ?? ""}
          onChange={({ target }) => onCommit(Number(target.selectedOptions[0].dataset.cm))}
        >
          <option value="" hidden>
            {between(cm, said)}
          </option>
          {places.map((place) => (
            <option key={place} value={place} data-cm={lengthCm[place].value}>
              {said.lengthOption(place, lengthCm[place].value)}
            </option>
          ))}
        </select>
      </div>
      <NumberField
        name={exactly}
        unit={common.units.cm}
        value={cm}
        range={limits.hairLengthCm}
        onCommit={onCommit}
      />
    </div>
  )
}
