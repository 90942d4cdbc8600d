import { heatHabits } from "../../../presets/pace"
import { counts, limits } from "../../plan/limits"
import type { TimingChoices } from "../../plan/timingChoices"
import { Choices } from "../Choices"
import { NumberField } from "../NumberField"

type Change = (label: string, part: Partial<TimingChoices>) => boolean
type Break = TimingChoices["breaks"][number]

const usualBreak: Break = { fromMin: 30, toMin: 45 }

/** Minutes in which nobody works. */
export function BreakFields({ breaks, change }: { breaks: TimingChoices["breaks"]; change: Change }) {
  const set = (index: number, part: Partial<Break>) =>
    change("Change a break", { breaks: breaks.with(index, { ...breaks[index], ...part }) })
  return (
    <fieldset>
      <legend>Breaks</legend>
      {breaks.map(({ fromMin, toMin }, index) => (
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

function nextBreak(breaks: TimingChoices["breaks"]): Break {
  const last = breaks.at(-1)
  return last ? { fromMin: last.toMin + 30, toMin: last.toMin + 45 } : usualBreak
}

const heats = [
  { value: "0", label: "None" },
  ...[heatHabits.mostMin / 2, heatHabits.mostMin].map((min) => ({ value: String(min), label: `${min} min` })),
]

/** Heat over the foils when all are on: the sheet decides whether any, and for how long. */
export const HeatChoice = ({ heatMin, change }: { heatMin: number | null; change: Change }) => (
  <Choices
    legend="Heat, where the sheet allows it"
    options={heats}
    value={String(heatMin ?? 0)}
    onChange={(value) => change("Change the heat", { heatMin: Number(value) || null })}
  />
)
