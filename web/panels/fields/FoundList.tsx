import { type ReactNode, useState } from "react"

/** So many rows are drawn at once: a list of thousands stands as soon as a list of ten. */
const rowsAtOnce = 100

/** The field that a list is searched by, and what was typed in it. */
export function SearchField({
  name,
  sought,
  onSought,
}: {
  name: string
  sought: string
  onSought: (sought: string) => void
}) {
  return (
    <input
      type="search"
      aria-label={name}
      placeholder={name}
      value={sought}
      onChange={({ target }) => onSought(target.value)}
    />
  )
}

/** What was found, a row each, the first of them at once and more as they are asked for. */
export function FoundList<Item>({
  found,
  row,
  more,
}: {
  found: readonly Item[]
  row: (item: Item) => ReactNode
  more: (count: number) => string
}) {
  const [shown, setShown] = useState(rowsAtOnce)
  const rest = found.length - shown
  return (
    <>
      <ul className="shelf">{found.slice(0, shown).map(row)}</ul>
      {rest > 0 && (
        <button type="button" className="button" onClick={() => setShown(shown + rowsAtOnce)}>
          {more(Math.min(rest, rowsAtOnce))}
        </button>
      )}
    </>
  )
}
