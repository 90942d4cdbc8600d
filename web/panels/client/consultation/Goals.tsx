import type { Zone } from "../../../core/document/consultation"
import { limits } from "../../../core/document/limits"
import { Chips } from "../../fields/Chips"
import { Choices } from "../../fields/Choices"
import { NumberField } from "../../fields/NumberField"
import {
  finishOptions,
  greyOptions,
  numberOf,
  optionOf,
  rootOptions,
  upkeepOptions,
  zoneOptions,
} from "./consultationWords"
import { LevelChips } from "./LevelChips"
import type { PartProps } from "./partProps"

/** Two goals, told apart: the level before toning, and the tone to finish on; where, and how much upkeep is wanted. */
export function Goals({ known, write }: PartProps) {
  const { liftToLevel, finish, brightest, rootDistanceMm } = known
  const brighten = (zones: readonly Zone[]) => write("Change where it is brightest", { brightest: zones })
  const near = (mm: number | null) => write("Change how near the root", { rootDistanceMm: mm })
  return (
    <section className="goals" aria-labelledby="goals-title">
      <h3 id="goals-title">What she wants</h3>
      <LevelChips
        legend="Lift to, before toning"
        level={liftToLevel}
        onChange={(level) => write("Change the level to lift to", { liftToLevel: level })}
      />
      <Choices
        legend="Finish tone"
        options={finishOptions}
        value={finish}
        onChange={(tone) => write("Change the finish tone", { finish: tone })}
        onClear={() => write("Leave the finish tone open", { finish: null })}
      />
      <Chips legend="Where brightest" options={zoneOptions} chosen={brightest} onChange={brighten} />
      <Choices
        legend="How near the root"
        options={rootOptions}
        value={optionOf(rootDistanceMm)}
        onChange={(mm) => near(numberOf(mm))}
        onClear={() => near(null)}
      />
      <Upkeep known={known} write={write} />
    </section>
  )
}

function Upkeep({ known: { upkeepWeeks, greyShare }, write }: PartProps) {
  const comeBack = (weeks: number | null) => write("Change the upkeep", { upkeepWeeks: weeks })
  const grey = (share: number | null) => write("Write down the grey", { greyShare: share })
  return (
    <>
      <div className="word-or-number">
        <Choices
          legend="Comes back every so many weeks"
          options={upkeepOptions}
          value={optionOf(upkeepWeeks)}
          onChange={(weeks) => comeBack(numberOf(weeks))}
          onClear={() => comeBack(null)}
        />
        <NumberField
          name="Comes back every"
          unit="weeks"
          value={upkeepWeeks ?? 10}
          isUnset={upkeepWeeks === null}
          range={limits.upkeepWeeks}
          onClear={() => comeBack(null)}
          onCommit={comeBack}
        />
      </div>
      <Choices
        legend="Grey"
        options={greyOptions}
        value={optionOf(greyShare)}
        onChange={(share) => grey(numberOf(share))}
        onClear={() => grey(null)}
      />
    </>
  )
}
