import type { Break, TimingChoices } from "../../../core/document/timingChoices"
import { counts, limits } from "../../../core/fields/limits"
import { useWords } from "../../../session/words"
import { Choices } from "../../fields/Choices"
import { NumberField } from "../../fields/NumberField"
import type { ChangeTiming } from "./changeTiming"

type Props = { timing: TimingChoices; change: ChangeTiming }

const usualBreak: Break = { fromMin: 30, toMin: 45 }

const resting = ["both", "1", "2"] as const

/** Minutes in which nobody works, or one of the two does not. */
export function BreakFields({ timing: { breaks, hands }, change }: Props) {
  const w = useWords().timing.settings
  const set = (index: number, part: Partial<Break>) =>
    change("set-breaks", { breaks: breaks.with(index, { ...breaks[index], ...part }) })
  return (
    <fieldset>
      <legend>{w.breaks}</legend>
      {breaks.map(({ fromMin, toMin, of }, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: breaks have no name of their own and keep their places
        <div className="with-fields" key={index}>
          <NumberField
            name={w.fromMin}
            unit=""
            value={fromMin}
            range={limits.visitMin}
            step={5}
            onCommit={(min) => set(index, { fromMin: min })}
          />
          <NumberField
            name={w.toMin}
            unit=""
            value={toMin}
            range={limits.visitMin}
            step={5}
            onCommit={(min) => set(index, { toMin: min })}
          />
          {hands === 2 && (
            <Choices
              legend={w.whoRests}
              options={resting.map((value) => ({ value, label: w.rests[value] }))}
              value={of === undefined ? "both" : of === 1 ? "1" : "2"}
              onChange={(who) => set(index, { of: who === "both" ? undefined : who === "1" ? 1 : 2 })}
            />
          )}
          <button
            type="button"
            className="button quiet"
            onClick={() => change("set-breaks", { breaks: breaks.toSpliced(index, 1) })}
          >
            {w.removeBreak}
          </button>
        </div>
      ))}
      {breaks.length < counts.breaks.high && (
        <button
          type="button"
          className="button"
          onClick={() => change("set-breaks", { breaks: [...breaks, nextBreak(breaks)] })}
        >
          {w.addBreak}
        </button>
      )}
    </fieldset>
  )
}

function nextBreak(breaks: readonly Break[]): Break {
  const last = breaks.at(-1)
  return last ? { fromMin: last.toMin + 30, toMin: last.toMin + 45 } : usualBreak
}
