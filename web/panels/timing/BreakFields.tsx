import { counts, limits } from "../../core/document/limits"
import type { Break, TimingChoices } from "../../core/document/timingChoices"
import { Choices } from "../fields/Choices"
import { NumberField } from "../fields/NumberField"

type Props = { timing: TimingChoices; change: (label: string, part: Partial<TimingChoices>) => boolean }

const usualBreak: Break = { fromMin: 30, toMin: 45 }

const resting = [
  { value: "both", label: "Nobody works" },
  { value: "1", label: "First pair rests" },
  { value: "2", label: "Second pair rests" },
] as const

/** Minutes in which nobody works, or one pair of hands does not. */
export function BreakFields({ timing: { breaks, hands }, change }: Props) {
  const set = (index: number, part: Partial<Break>) =>
    change("Change a break", { breaks: breaks.with(index, { ...breaks[index], ...part }) })
  return (
    <fieldset>
      <legend>Breaks</legend>
      {breaks.map(({ fromMin, toMin, of }, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: breaks have no name of their own and keep their places
        <div className="with-fields" key={index}>
          <NumberField
            name="From minute"
            unit=""
            value={fromMin}
            range={limits.visitMin}
            step={5}
            onCommit={(min) => set(index, { fromMin: min })}
          />
          <NumberField
            name="To minute"
            unit=""
            value={toMin}
            range={limits.visitMin}
            step={5}
            onCommit={(min) => set(index, { toMin: min })}
          />
          {hands === 2 && (
            <Choices
              legend="Who rests"
              options={resting}
              value={of === undefined ? "both" : of === 1 ? "1" : "2"}
              onChange={(who) => set(index, { of: who === "both" ? undefined : who === "1" ? 1 : 2 })}
            />
          )}
          <button
            type="button"
            className="button quiet"
            onClick={() => change("Take a break out", { breaks: breaks.toSpliced(index, 1) })}
          >
            Take out
          </button>
        </div>
      ))}
      {breaks.length < counts.breaks.high && (
        <button
          type="button"
          className="button"
          onClick={() => change("Add a break", { breaks: [...breaks, nextBreak(breaks)] })}
        >
          Add a break
        </button>
      )}
    </fieldset>
  )
}

function nextBreak(breaks: readonly Break[]): Break {
  const last = breaks.at(-1)
  return last ? { fromMin: last.toMin + 30, toMin: last.toMin + 45 } : usualBreak
}
