import { stackCount } from "../../../../presets/placement/stacking"
import { NumberField } from "../../fields/NumberField"

const [least, most] = stackCount.range

type Props = { count: number; onChange: (count: number) => void }

/** How many: by one more and one less, by a slider, or typed. */
export function CountField({ count, onChange }: Props) {
  const step = (by: number) => onChange(Math.max(least, Math.min(most, count + by)))
  return (
    <div className="stack-count">
      <button type="button" className="button" aria-label="One fewer" onClick={() => step(-1)}>
        −
      </button>
      <NumberField
        name="How many more"
        unit=""
        value={count}
        range={{ low: least, high: most }}
        onCommit={(wanted) => onChange(Math.round(wanted))}
      />
      <button type="button" className="button" aria-label="One more" onClick={() => step(1)}>
        +
      </button>
      <input
        type="range"
        aria-label="How many more, by sliding"
        min={least}
        max={most}
        value={count}
        onChange={(event) => onChange(event.target.valueAsNumber)}
      />
    </div>
  )
}
