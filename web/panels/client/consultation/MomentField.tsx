import { useId } from "react"
import { clockIn, momentAt, momentMs } from "../../../core/text/zonedTime"
import { useTyped } from "../../fields/useTyped"

type Props = { name: string; value: string; zone: string; onCommit: (moment: string) => void }

/** A day and a time as the clock on this wall shows them. One that is half typed changes nothing. */
export function MomentField({ name, value, zone, onCommit }: Props) {
  const id = useId()
  const ms = momentMs(value)
  const shown = ms === null ? "" : clockIn(zone, ms)
  const [text, setText] = useTyped(shown)
  return (
    <div className="field">
      <label className="name" htmlFor={id}>
        {name}
      </label>
      <input
        id={id}
        type="datetime-local"
        min="2000-01-01T00:00"
        max="2999-12-31T23:59"
        value={text}
        onChange={({ target }) => setText(target.value)}
        onBlur={({ target }) => {
          if (target.value === "" || !target.validity.valid) setText(shown)
          else if (target.value !== shown) onCommit(momentAt(zone, target.value))
        }}
      />
    </div>
  )
}
