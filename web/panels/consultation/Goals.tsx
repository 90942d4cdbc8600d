import { limits } from "../../plan/limits"
import { NumberField } from "../NumberField"
import { SelectField } from "../SelectField"
import type { PartProps } from "./Consultation"
import {
  finishOptions,
  greyOptions,
  levelOptions,
  numberOf,
  optionOf,
  rootOptions,
  zoneOptions,
} from "./consultationWords"

/** Two goals, told apart: the level before toning, and the tone to finish on; where, and how much upkeep is wanted. */
export function Goals({ known, write }: PartProps) {
  const { liftToLevel, finish, upkeepWeeks, rootDistanceMm, greyShare } = known
  return (
    <>
      <div className="pairs">
        <SelectField
          name="Lift to, before toning"
          options={levelOptions}
          value={optionOf(liftToLevel)}
          onChange={(value) => write("Change the level to lift to", { liftToLevel: numberOf(value) })}
        />
        <SelectField
          name="Finish tone"
          options={finishOptions}
          value={finish}
          onChange={(tone) => write("Change the finish tone", { finish: tone })}
        />
        <SelectField
          name="How near the root"
          options={rootOptions}
          value={optionOf(rootDistanceMm)}
          onChange={(mm) => write("Change how near the root", { rootDistanceMm: numberOf(mm) })}
        />
        <SelectField
          name="Grey"
          options={greyOptions}
          value={optionOf(greyShare)}
          onChange={(share) => write("Write down the grey", { greyShare: numberOf(share) })}
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
      <Brightest known={known} write={write} />
    </>
  )
}

function Brightest({ known: { brightest }, write }: PartProps) {
  return (
    <fieldset>
      <legend>Where brightest</legend>
      <div className="choices">
        {zoneOptions.map(({ value, label }) => (
          <label key={value}>
            <input
              type="checkbox"
              checked={brightest.includes(value)}
              onChange={({ target }) =>
                write("Change where it is brightest", {
                  brightest: target.checked
                    ? [...brightest, value]
                    : brightest.filter((zone) => zone !== value),
                })
              }
            />
            <span>{label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}
