import { useId } from "react"
import { lengthCm } from "../../../presets/client/hairTypes"
import { limits } from "../../core/document/limits"
import { capital } from "../../core/text/capital"
import { wordFor } from "./figureWords"
import { NumberField } from "./NumberField"

const words = Object.entries(lengthCm).sort(([, a], [, b]) => a.value - b.value)

/** A length that no word stands for, told by the words on either side of it. */
function between(cm: number): string {
  const after = words.findIndex(([, { value }]) => value > cm)
  if (after === 0) return `Above the ${words[0][0]}`
  return after < 0
    ? `Below the ${words[words.length - 1][0]}`
    : `${capital(words[after - 1][0])} to ${words[after][0]}`
}

type Props = { name: string; cm: number; onCommit: (cm: number) => void }

/** How long the hair is at one place: by where it falls, or in centimetres. */
export function LengthField({ name, cm, onCommit }: Props) {
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
            {between(cm)}
          </option>
          {words.map(([word, { value }]) => (
            <option key={word} value={word} data-cm={value}>
              {capital(word)}, {value} cm
            </option>
          ))}
        </select>
      </div>
      <NumberField
        name={`${name} length`}
        unit="cm"
        value={cm}
        range={limits.hairLengthCm}
        onCommit={onCommit}
      />
    </div>
  )
}
