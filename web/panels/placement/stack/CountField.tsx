import { stackCount } from "../../../../presets/placement/stacking"
import { useWords } from "../../../session/words"
import { NumberField } from "../../fields/NumberField"

const [least, most] = stackCount.range

type Props = { count: number; onChange: (count: number) => void }

/** How many: by one more and one less, by a slider, or typed. */
export function CountField({ count, onChange }: Props) {
  const w = useWords().placement.stack
  const step = (by: number) => onChange(Math.max(least, Math.min(most, count + by)))
  return (
    <div className="stack-count">
      <button type="button" className="button" aria-label={w.oneFewer} onClick={() => step(-1)}>
        −
      </button>
      <NumberField
        name={w.more}
        unit=""
        value={count}
        range={{ low: least, high: most }}
        onCommit={(wanted) => onChange(Math.round(wanted))}
      />
      <button type="button" className="button" aria-label={w.oneMore} onClick={() => step(1)}>
        +
      </button>
      <input
        type="range"
        aria-label={w.bySliding}
        min={least}
        max={most}
        value={count}
        onChange={(event) => onChange(event.target.valueAsNumber)}
      />
    </div>
  )
}
