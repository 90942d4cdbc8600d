import { useId } from "react"

import { useWords } from "../../session/words"

type Props<Value extends string> = {
  name: string
  options: readonly { value: Value; label: string }[]
  value: Value | null
  onChange: (value: Value | null) => void
  isNameUnseen?: boolean
  /** What stands there while nothing is chosen. */
  empty?: string
}

/** One of several words, or none of them. A value that came with a file and has no word is shown as it is. */
export function SelectField<Value extends string>({
  name,
  options,
  value,
  onChange,
  isNameUnseen,
  empty,
}: Props<Value>) {
  const { common } = useWords()
  const id = useId()
  return (
    <div className="field">
      <label className={isNameUnseen ? "unseen" : "name"} htmlFor={id}>
        {name}
      </label>
      <select
        id={id}
        value={value ?? ""}
        onChange={({ target }) =>
          onChange(options.find((option) => option.value === target.value)?.value ?? null)
        }
      >
        <option value="">{empty ?? common.fields.notKnown}</option>
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
        {value !== null && options.every((option) => option.value !== value) && (
          <option value={value}>{value}</option>
        )}
      </select>
    </div>
  )
}
