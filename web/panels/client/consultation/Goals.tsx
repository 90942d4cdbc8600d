import type { Zone } from "../../../core/document/consultation"
import { limits } from "../../../core/fields/limits"
import { useWords } from "../../../session/words"
import { Chips } from "../../fields/Chips"
import { Choices } from "../../fields/Choices"
import { NumberField } from "../../fields/NumberField"
import { numberOf, optionOf, optionsOf, rootOptions, upkeepOptions, zoneOptions } from "./consultationOptions"
import { LevelChips } from "./LevelChips"
import type { PartProps } from "./partProps"

/** Two goals, told apart: the level before toning, and the tone to finish on; where, and how much upkeep is wanted. */
export function Goals({ known, write }: PartProps) {
  const words = useWords()
  const { goals: said } = words.client
  const { liftToLevel, finish, brightest, rootDistanceMm } = known
  const brighten = (zones: readonly Zone[]) => write("set-brightest", { brightest: zones })
  const near = (mm: number | null) => write("set-root", { rootDistanceMm: mm })
  return (
    <section className="goals" aria-labelledby="goals-title">
      <h3 id="goals-title">{said.title}</h3>
      <LevelChips
        legend={said.target}
        level={liftToLevel}
        onChange={(level) => write("set-target", { liftToLevel: level })}
      />
      <Choices
        legend={said.finish}
        options={optionsOf(said.finishes)}
        value={finish}
        onChange={(tone) => write("set-finish", { finish: tone })}
        onClear={() => write("clear-finish", { finish: null })}
      />
      <Chips legend={said.brightest} options={zoneOptions(words)} chosen={brightest} onChange={brighten} />
      <Choices
        legend={said.root}
        options={rootOptions(words)}
        value={optionOf(rootDistanceMm)}
        onChange={(mm) => near(numberOf(mm))}
        onClear={() => near(null)}
      />
      <Upkeep known={known} write={write} />
    </section>
  )
}

function Upkeep({ known: { upkeepWeeks, greyShare }, write }: PartProps) {
  const { goals: said } = useWords().client
  const comeBack = (weeks: number | null) => write("set-upkeep", { upkeepWeeks: weeks })
  const grey = (share: number | null) => write("set-grey", { greyShare: share })
  return (
    <>
      <div className="word-or-number">
        <Choices
          legend={said.upkeep}
          options={upkeepOptions}
          value={optionOf(upkeepWeeks)}
          onChange={(weeks) => comeBack(numberOf(weeks))}
          onClear={() => comeBack(null)}
        />
        <NumberField
          name={said.upkeepOther}
          unit={said.weeks}
          value={upkeepWeeks ?? 10}
          isUnset={upkeepWeeks === null}
          range={limits.upkeepWeeks}
          onClear={() => comeBack(null)}
          onCommit={comeBack}
        />
      </div>
      <Choices
        legend={said.grey}
        options={greyOptions(said.greys)}
        value={optionOf(greyShare)}
        onChange={(share) => grey(numberOf(share))}
        onClear={() => grey(null)}
      />
    </>
  )
}

/** Keys that look like whole numbers would come first: the shares in their own order. */
const greyOptions = (greys: Readonly<Record<string, string>>) =>
  ["0", "0.1", "0.25", "0.5", "0.75", "1"].map((share) => ({ value: share, label: greys[share] }))
