import { useId } from "react"
import { letters } from "../../core/fields/limits"
import { useTyped } from "../fields/useTyped"

/** Lines of words, kept when the field is left. */
export function NoteField(props: { name: string; value: string; onCommit: (text: string) => void }) {
  const { name, value, onCommit } = props
  const id = useId()
  const [text, setText] = useTyped(value)
  return (
    <div className="field">
      <label className="name" htmlFor={id}>
        {name}
      </label>
      <textarea
        id={id}
        rows={3}
        maxLength={letters.note}
        value={text}
        onChange={({ target }) => setText(target.value)}
        onBlur={() => text !== value && onCommit(text)}
      />
    </div>
  )
}
