import type { Zone } from "../../../core/document/consultation"
import { limits } from "../../../core/fields/limits"
import { useWords } from "../../../session/words"
import { Chips } from "../../fields/Chips"
import { Choices } from "../../fields/Choices"
import { NumberField } from "../../fields/NumberField"
import { labelledOptions } from "../../fields/options"
import { numberOf, optionOf, rootOptions, upkeepOptions, zoneOptions } from "./consultationOptions"
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
    <>
      <LevelChips
        legend={said.target}
        level={liftToLevel}
        shown="lifted"
        onChange={(level) => write("set-target", { liftToLevel: level })}
      />
      <Choices
        legend={said.finish}
        options={labelledOptions(said.finishes)}
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
    </>
  )
}

function Upkeep({ known: { upkeepWeeks }, write }: PartProps) {
  const { goals: said } = useWords().client
  const comeBack = (weeks: number | null) => write("set-upkeep", { upkeepWeeks: weeks })
  return (
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
  )
}
