import { useId, useRef } from "react"

type Props<Value extends string> = {
  legend: string
  options: readonly { value: Value; label: string }[]
  value: Value | null
  onChange: (value: Value) => void
  /** Where it may be left open: a touch on what is chosen takes it back. */
  onClear?: () => unknown
}

/** A gloved hand that taps twice means one tap: only a later touch takes back. */
const doubleTapMs = 600
/** A browser gives no click for the space bar on what is chosen already. */
const clearingKeys = [" ", "Delete", "Backspace"]

/** One of a few words, side by side; none is inked when the value is a number between them. */
export function Choices<Value extends string>({ legend, options, value, onChange, onClear }: Props<Value>) {
  const name = useId()
  const chosenAtMs = useRef(0)
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
              onChange={({ timeStamp }) => {
                chosenAtMs.current = timeStamp
                onChange(option.value)
              }}
              onClick={({ timeStamp }) => {
                if (option.value === value && timeStamp - chosenAtMs.current > doubleTapMs) onClear?.()
              }}
              onKeyDown={(event) => {
                if (!onClear || option.value !== value || !clearingKeys.includes(event.key)) return
                event.preventDefault()
                onClear()
              }}
            />
            <span>{option.label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}
