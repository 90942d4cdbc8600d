import type { AdditiveSheet } from "../../../../presets/formula/productSheet"
import { letters, limits } from "../../../core/fields/limits"
import { useWords } from "../../../session/words"
import { Choices } from "../../fields/Choices"
import { NumberField } from "../../fields/NumberField"
import { TextField } from "../../fields/TextField"

type Props = {
  additives: readonly AdditiveSheet[]
  onChange: (additives: readonly AdditiveSheet[]) => void
}

/** What may be added, and whether it takes the place of developer. */
export function AdditiveRows({ additives, onChange }: Props) {
  const { common, formula } = useWords()
  const w = formula.productSheets
  const yesNo = [
    { value: "yes", label: w.answers.yes },
    { value: "no", label: w.answers.no },
  ] as const
  return (
    <fieldset className="sheet-rows">
      <legend>{w.additives}</legend>
      {additives.map((row, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: rows are told apart by their place alone while their names are typed
        <div className="with-fields" key={index}>
          <TextField
            name={w.additiveName}
            value={row.name}
            most={letters.name}
            onCommit={(name) => onChange(additives.with(index, { ...row, name }))}
          />
          <NumberField
            name={w.additiveGrams}
            unit={common.units.g}
            value={row.gPerG}
            range={limits.strandShare}
            step={0.05}
            onCommit={(gPerG) => onChange(additives.with(index, { ...row, gPerG }))}
          />
          <Choices
            legend={w.replaces}
            options={yesNo}
            value={row.replacesDeveloper ? "yes" : "no"}
            onChange={(said) =>
              onChange(additives.with(index, { ...row, replacesDeveloper: said === "yes" }))
            }
          />
          <button
            type="button"
            className="button quiet"
            onClick={() => onChange(additives.toSpliced(index, 1))}
          >
            {w.removeAdditive}
          </button>
        </div>
      ))}
      <div className="actions">
        <button
          type="button"
          className="button"
          onClick={() => onChange([...additives, { name: "", gPerG: 0.1, replacesDeveloper: false }])}
        >
          {w.addAdditive}
        </button>
      </div>
    </fieldset>
  )
}
