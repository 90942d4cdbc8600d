import { heatHabits } from "../../../../presets/timing/pace"
import type { TimingChoices } from "../../../core/document/timingChoices"
import { limits } from "../../../core/fields/limits"
import type { HeatRefusal } from "../../../core/schedule/heatRefusal"
import { useWords } from "../../../session/words"
import { say } from "../../../words/say"
import { Choices } from "../../fields/Choices"
import { NumberField } from "../../fields/NumberField"
import type { ChangeTiming } from "./changeTiming"

type Props = {
  timing: TimingChoices
  /** Why heat is left out though it was chosen. */
  refusal: HeatRefusal | null
  change: ChangeTiming
}

const heatMinutes = [0, heatHabits.mostMin / 2, heatHabits.mostMin]

/** Heat over the foils when all are on: the sheet decides whether any, and for how long. */
export function HeatChoice({ timing: { heatMin, heatC }, refusal, change }: Props) {
  const { settings: w, heat } = useWords().timing
  const { celsius } = useWords().common.units
  return (
    <div className="with-fields">
      <Choices
        legend={w.heat}
        options={heatMinutes.map((min) => ({
          value: `${min}`,
          label: min === 0 ? w.noHeat : w.minutes(min),
        }))}
        value={String(heatMin ?? 0)}
        onChange={(value) => change("set-heat", { heatMin: Number(value) || null })}
      />
      {heatMin !== null && (
        <NumberField
          name={w.temperature}
          unit={celsius}
          value={heatC ?? heatHabits.warmthC.low}
          isUnset={heatC === null || heatC === undefined}
          range={limits.heatC}
          onClear={() => change("set-heat", { heatC: null })}
          onCommit={(warmth) => change("set-heat", { heatC: warmth })}
        />
      )}
      {refusal && <p className="fault">{say(heat, refusal)}</p>}
    </div>
  )
}
