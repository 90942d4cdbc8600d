import { limits } from "../../plan/limits"
import { NumberField } from "../NumberField"
import type { PartProps } from "./Consultation"
import { finishOptions, levelOf, levelOptions, levelValue } from "./consultationWords"
import { SelectField } from "./SelectField"

/** Two goals, told apart: the level before toning, and the tone to finish on; and how much upkeep is wanted. */
export function Goals({ known, write }: PartProps) {
  const { liftToLevel, finish, upkeepWeeks } = known
  return (
    <div className="pairs">
      <SelectField
        name="Lift to, before toning"
        options={levelOptions}
        value={levelValue(liftToLevel)}
        onChange={(value) => write("Change the level to lift to", { liftToLevel: levelOf(value) })}
      />
      <SelectField
        name="Finish tone"
        options={finishOptions}
        value={finish}
        onChange={(tone) => write("Change the finish tone", { finish: tone })}
      />
      <NumberField
        name="Comes back every"
        unit="weeks"
        value={upkeepWeeks ?? 10}
        isUnset={upkeepWeeks === null}
        range={limits.upkeepWeeks}
        onCommit={(weeks) => write("Change the upkeep", { upkeepWeeks: weeks })}
      />
    </div>
  )
}
