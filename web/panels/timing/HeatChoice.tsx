import { heatHabits } from "../../../presets/timing/pace"
import { limits } from "../../core/document/limits"
import type { TimingChoices } from "../../core/document/timingChoices"
import { Choices } from "../fields/Choices"
import { NumberField } from "../fields/NumberField"

type Props = {
  timing: TimingChoices
  /** Why heat is left out though it was chosen. */
  refusal: string | null
  change: (label: string, part: Partial<TimingChoices>) => boolean
}

const heats = [
  { value: "0", label: "None" },
  ...[heatHabits.mostMin / 2, heatHabits.mostMin].map((min) => ({ value: String(min), label: `${min} min` })),
]

/** Heat over the foils when all are on: the sheet decides whether any, and for how long. */
export const HeatChoice = ({ timing: { heatMin, heatC }, refusal, change }: Props) => (
  <div className="with-fields">
    <Choices
      legend="Heat, where the sheet allows it"
      options={heats}
      value={String(heatMin ?? 0)}
      onChange={(value) => change("Change the heat", { heatMin: Number(value) || null })}
    />
    {heatMin !== null && (
      <NumberField
        name="Warmth, if measured"
        unit="°C"
        value={heatC ?? heatHabits.warmthC.low}
        isUnset={heatC === null || heatC === undefined}
        range={limits.heatC}
        onClear={() => change("Change the warmth of the heat", { heatC: null })}
        onCommit={(warmth) => change("Change the warmth of the heat", { heatC: warmth })}
      />
    )}
    {refusal && <p className="fault">{refusal}</p>}
  </div>
)
