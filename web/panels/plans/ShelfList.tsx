import { useEffect, useRef } from "react"
import { saveFile } from "../../session/saveFile"
import { ShelfRow } from "./ShelfRow"
import type { ShelfOnScreen } from "./useShelf"

type Props = { shelf: ShelfOnScreen; openId: string; onOpened: () => void }

/** The plans kept in this browser, the latest first, and the last one taken away. */
export function ShelfList({ shelf, openId, onOpened }: Props) {
  const { entries, removed, aside } = shelf
  const title = useRef<HTMLHeadingElement>(null)
  const undo = useRef<HTMLButtonElement>(null)
  // The button that had the focus goes with its row.
  useEffect(() => {
    if (!removed) return
    undo.current?.focus()
    return () => title.current?.focus()
  }, [removed])
  return (
    <section aria-labelledby="shelf-title">
      <h3 id="shelf-title" ref={title} tabIndex={-1}>
        Kept in this browser
      </h3>
      <div aria-live="polite">
        {removed && (
          <p className="removed">
            {removed.title} was deleted.
            <button ref={undo} type="button" className="button" onClick={removed.putBack}>
              Undo
            </button>
          </p>
        )}
      </div>
      <ul className="shelf">
        {entries.map((entry) => (
          <ShelfRow
            key={entry.id}
            entry={entry}
            isOpen={entry.id === openId}
            shelf={shelf}
            onOpened={onOpened}
          />
        ))}
      </ul>
      {entries.length === 0 && (
        <p className="aside">None yet. A plan is kept as soon as something is drawn.</p>
      )}
      {aside.length > 0 && (
        <p className="aside">
          {aside.length === 1 ? "One plan" : `${aside.length} plans`} could not be read and{" "}
          {aside.length === 1 ? "was" : "were"} set aside.{" "}
          <button
            type="button"
            className="button"
            onClick={() => saveFile(JSON.stringify(aside, null, 1), "set-aside.json", "application/json")}
          >
            Save what was set aside
          </button>
        </p>
      )}
    </section>
  )
}
