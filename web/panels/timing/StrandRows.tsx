import { looks } from "../../../presets/pace"
import { limits } from "../../plan/limits"
import type { StrandTest } from "../../plan/timingChoices"
import { NumberField } from "../NumberField"

type Props = { test: StrandTest; most: number; onChange: (test: StrandTest) => void }

/** What was seen on the strand, look by look. */
export function StrandRows({ test, most, onChange }: Props) {
  const { rows } = test
  const set = (index: number, part: Partial<StrandTest["rows"][number]>) =>
    onChange({ ...test, rows: rows.with(index, { ...rows[index], ...part }) })
  return (
    <ol className="strand-rows">
      {rows.map(({ minutes, level }, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: looks have no name of their own and keep their places
        <li className="with-fields" key={index}>
          <NumberField
            name="Minutes on"
            unit="min"
            value={minutes}
            range={limits.heldMin}
            step={5}
            onCommit={(value) => set(index, { minutes: value })}
          />
          <NumberField
            name="Level seen"
            unit=""
            value={level}
            range={limits.level}
            step={0.5}
            onCommit={(value) => set(index, { level: value })}
          />
          <button
            type="button"
            className="button quiet"
            onClick={() => onChange({ ...test, rows: rows.toSpliced(index, 1) })}
          >
            Take out
          </button>
        </li>
      ))}
      {rows.length < most && (
        <li>
          <button
            type="button"
            className="button"
            onClick={() => onChange({ ...test, rows: [...rows, nextRow(test)] })}
          >
            Add a look at the strand
          </button>
        </li>
      )}
    </ol>
  )
}

/** The next look is due one interval after the last; its level is the last one seen until another is typed. */
function nextRow({ rows, startLevel }: StrandTest) {
  const last = rows.at(-1)
  return last
    ? { minutes: last.minutes + looks.everyMin, level: last.level }
    : { minutes: looks.firstMin, level: startLevel }
}
