import { useId } from "react"
import { useTyped } from "./useTyped"

type Props = { name: string; value: string; most: number; onCommit: (value: string) => void; hint?: string }

/** A line of words, kept when the field is left. */
export function TextField({ name, value, most, onCommit, hint }: Props) {
  const id = useId()
  const [text, setText] = useTyped(value)
  const commit = () => {
    if (text !== value) onCommit(text)
  }
  return (
    <div className="field">
      <label className="name" htmlFor={id}>
        {name}
      </label>
      <input
        id={id}
        type="text"
        autoComplete="off"
        maxLength={most}
        value={text}
        aria-describedby={hint ? `${id}-hint` : undefined}
        onChange={(event) => setText(event.target.value)}
        onBlur={commit}
        onKeyDown={(event) => event.key === "Enter" && commit()}
      />
      {hint && <small id={`${id}-hint`}>{hint}</small>}
    </div>
  )
}
