import { useId } from "react"
import { useTyped } from "./useTyped"

type Props = { name: string; value: string; onCommit: (day: string) => void }

/** A day, "2026-03-09". One that is half typed changes nothing. */
export function DateField({ name, value, onCommit }: Props) {
  const id = useId()
  const [text, setText] = useTyped(value)
  return (
    <div className="field">
      <label className="name" htmlFor={id}>
        {name}
      </label>
      <input
        id={id}
        type="date"
        required
        min="1900-01-01"
        max="2999-12-31"
        value={text}
        onChange={({ target }) => {
          setText(target.value)
          if (target.validity.valid && target.value !== value) onCommit(target.value)
        }}
        onBlur={() => setText(value)}
      />
    </div>
  )
}
