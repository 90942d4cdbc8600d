import { useId } from "react"

type Props<Value extends string> = {
  legend: string
  options: readonly { value: Value; label: string }[]
  value: Value | null
  onChange: (value: Value) => void
}

/** One of a few words, side by side; none is inked when the value is a number between them. */
export function Choices<Value extends string>({ legend, options, value, onChange }: Props<Value>) {
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
            />
            <span>{option.label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}
