import { type ReactNode, useId, useRef } from "react"
import { useWords } from "../../session/words"

export type Choice<Value extends string> = {
  value: Value
  label: string
  /** A mark beside the word. */
  mark?: ReactNode
}

type Props<Value extends string> = {
  legend: string
  options: readonly Choice<Value>[]
  value: Value | null
  onChange: (value: Value) => void
  /** A touch on what is chosen already: it confirms and never takes back. */
  onAgain?: (value: Value) => unknown
  /** Where it may be left open: the small cross beside what is chosen, or a key, takes it back. */
  onClear?: () => unknown
}

/** A browser gives no click for the space bar on what is chosen already. */
const clearingKeys = [" ", "Delete", "Backspace"]

/** One of a few words, side by side; none is inked when the value is a number between them. */
export function Choices<Value extends string>(props: Props<Value>) {
  const { legend, options, value, onChange, onAgain, onClear } = props
  const name = useId()
  const first = useRef<HTMLInputElement>(null)
  const clear = () => {
    onClear?.()
    first.current?.focus()
  }
  return (
    <fieldset>
      <legend>{legend}</legend>
      <div className="choices">
        {options.map((option, index) => (
          <label key={option.value}>
            <input
              ref={index === 0 ? first : undefined}
              type="radio"
              name={name}
              checked={option.value === value}
              onChange={() => onChange(option.value)}
              onClick={() => option.value === value && onAgain?.(value)}
              onKeyDown={(event) => {
                if (!onClear || option.value !== value || !clearingKeys.includes(event.key)) return
                event.preventDefault()
                clear()
              }}
            />
            <span>
              {option.mark}
              {option.label}
            </span>
          </label>
        ))}
        {onClear && value !== null && <Clear legend={legend} onClear={clear} />}
      </div>
    </fieldset>
  )
}

function Clear({ legend, onClear }: { legend: string; onClear: () => void }) {
  const { fields } = useWords().common
  return (
    <button type="button" className="clear" aria-label={fields.clear(legend)} onClick={onClear}>
      ×
    </button>
  )
}
