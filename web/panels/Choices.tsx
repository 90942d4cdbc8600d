import { useId } from "react"

type Props<Value extends string> = {
  legend: string
  options: readonly { value: Value; label: string }[]
  value: Value | null
  onChange: (value: Value) => void
  /** Where it may be left open: a touch on what is chosen takes it back. */
  onClear?: () => unknown
}

/** One of a few words, side by side; none is inked when the value is a number between them. */
export function Choices<Value extends string>({ legend, options, value, onChange, onClear }: Props<Value>) {
  const name = useId()
  return (
    <fieldset>
      <legend>{legend}</legend>
      <div className="choices">
        {options.map((option) => (
          <label key={option.value}>
            <input
              type="radio"
              name={name}
              checked={option.value === value}
              onChange={() => onChange(option.value)}
              onClick={() => option.value === value && onClear?.()}
            />
            <span>{option.label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}
