import type { AdditiveSheet } from "../../../../presets/formula/productSheet"
import { letters, limits } from "../../../core/document/limits"
import { Choices } from "../../fields/Choices"
import { NumberField } from "../../fields/NumberField"
import { TextField } from "../../fields/TextField"

type Props = {
  additives: readonly AdditiveSheet[]
  onChange: (additives: readonly AdditiveSheet[]) => void
}

const yesNo = [
  { value: "yes", label: "Yes" },
  { value: "no", label: "No" },
] as const

/** What may be stirred in, and whether it takes the place of developer. */
export const AdditiveRows = ({ additives, onChange }: Props) => (
  <fieldset className="sheet-rows">
    <legend>What may be stirred in</legend>
    {additives.map((row, index) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: rows are told apart by their place alone while their names are typed
      <div className="with-fields" key={index}>
        <TextField
          name="Called"
          value={row.name}
          most={letters.name}
          onCommit={(name) => onChange(additives.with(index, { ...row, name }))}
        />
        <NumberField
          name="For each gram of product"
          unit="g"
          value={row.gPerG}
          range={limits.strandShare}
          step={0.05}
          onCommit={(gPerG) => onChange(additives.with(index, { ...row, gPerG }))}
        />
        <Choices
          legend="In place of developer?"
          options={yesNo}
          value={row.replacesDeveloper ? "yes" : "no"}
          onChange={(said) => onChange(additives.with(index, { ...row, replacesDeveloper: said === "yes" }))}
        />
        <button
          type="button"
          className="button quiet"
          onClick={() => onChange(additives.toSpliced(index, 1))}
        >
          Take it out
        </button>
      </div>
    ))}
    <div className="actions">
      <button
        type="button"
        className="button"
        onClick={() => onChange([...additives, { name: "", gPerG: 0.1, replacesDeveloper: false }])}
      >
        Add one
      </button>
    </div>
  </fieldset>
)
