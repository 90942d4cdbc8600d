import { tradePairs } from "../../../../presets/formula/developers"
import type { DeveloperLift } from "../../../../presets/formula/productSheet"
import { limits } from "../../../core/fields/limits"
import { labelPercent } from "../../../core/mixing/strength"
import { useWords } from "../../../session/words"
import { NumberField } from "../../fields/NumberField"

type Props = {
  developers: readonly DeveloperLift[]
  onChange: (developers: readonly DeveloperLift[]) => void
}

/** The developers a sheet allows, and the levels of lift it prints for each. */
export function DeveloperRows({ developers, onChange }: Props) {
  const { common, formula } = useWords()
  const w = formula.productSheets
  const offered = tradePairs.filter(({ volume }) => developers.every((each) => each.volume !== volume))
  const add = (volume: number) =>
    onChange([...developers, { volume, levels: null }].toSorted((a, b) => a.volume - b.volume))
  return (
    <fieldset className="sheet-rows">
      <legend>{w.developers}</legend>
      {developers.map((row, index) => (
        <DeveloperRow
          key={row.volume}
          row={row}
          onChange={(next) => onChange(developers.with(index, next))}
          onRemove={() => onChange(developers.toSpliced(index, 1))}
        />
      ))}
      <div className="with-fields">
        {offered.map(({ volume }) => (
          <button type="button" className="button" key={volume} onClick={() => add(volume)}>
            {w.addVolume(volume)}
          </button>
        ))}
        <NumberField
          key={developers.length}
          name={w.otherVolume}
          unit={common.units.vol}
          value={20}
          isUnset
          range={limits.developerVolume}
          onCommit={add}
        />
      </div>
    </fieldset>
  )
}

type RowProps = { row: DeveloperLift; onChange: (row: DeveloperLift) => void; onRemove: () => void }

function DeveloperRow({ row: { volume, levels }, onChange, onRemove }: RowProps) {
  const { common, formula } = useWords()
  const w = formula.productSheets
  const lift = (end: "low" | "high", value: number) =>
    onChange({ volume, levels: { ...(levels ?? { low: value, high: value }), [end]: value } })
  return (
    <div className="with-fields">
      <p className="row-name">{w.volume({ volume, percent: labelPercent(volume) })}</p>
      {(["low", "high"] as const).map((end) => (
        <NumberField
          key={end}
          name={end === "low" ? w.liftsFrom : w.liftsTo}
          unit={common.units.levels}
          value={levels?.[end] ?? 0}
          isUnset={levels === null}
          range={limits.liftLevels}
          onClear={() => onChange({ volume, levels: null })}
          onCommit={(value) => lift(end, value)}
        />
      ))}
      <button type="button" className="button quiet" onClick={onRemove}>
        {w.removeVolume(volume)}
      </button>
    </div>
  )
}
