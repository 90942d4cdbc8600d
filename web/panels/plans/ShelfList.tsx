import { useEffect, useRef, useState } from "react"
import { useWords } from "../../session/words"
import type { ShelfEntry } from "../../storage/records"
import { FoundList, SearchField } from "../fields/FoundList"
import { alikeEntries } from "./alikeEntries"
import { ShelfRow } from "./ShelfRow"
import type { ShelfOnScreen } from "./useShelf"

type Props = { shelf: ShelfOnScreen; openId: string; onOpened: () => void }

/** From so many plans on they can be looked for by name: no more of them stand on a screen. */
const findFrom = 6

/** The plans kept in this browser, the latest first, and the last one deleted. */
export function ShelfList({ shelf, openId, onOpened }: Props) {
  const w = useWords().plans.list
  const [sought, setSought] = useState("")
  const title = useRef<HTMLHeadingElement>(null)
  const found = entriesFor(shelf.entries, sought)
  const alike = alikeEntries(shelf.entries)
  return (
    <section aria-labelledby="shelf-title">
      <h3 id="shelf-title" ref={title} tabIndex={-1}>
        {w.title}
      </h3>
      <Removed shelf={shelf} onGone={() => title.current?.focus()} />
      {shelf.entries.length >= findFrom && <SearchField name={w.find} sought={sought} onSought={setSought} />}
      <FoundList
        found={found}
        row={(entry) => (
          <ShelfRow
            key={entry.id}
            entry={entry}
            alike={alike.get(entry.id) ?? null}
            isOpen={entry.id === openId}
            shelf={shelf}
            onOpened={onOpened}
          />
        )}
        more={w.more}
      />
      {shelf.isRead && shelf.entries.length === 0 && <p className="aside">{w.none}</p>}
    </section>
  )
}

function entriesFor(entries: readonly ShelfEntry[], sought: string): readonly ShelfEntry[] {
  const part = sought.trim().toLocaleLowerCase()
  if (part === "") return entries
  return entries.filter(({ name, initials }) => `${name} ${initials}`.toLocaleLowerCase().includes(part))
}

/** The button that had the focus goes with its row; it passes to the way back, and then to the list. */
function Removed({ shelf: { removed }, onGone }: { shelf: ShelfOnScreen; onGone: () => void }) {
  const w = useWords().plans.list
  const undo = useRef<HTMLButtonElement>(null)
  const gone = useRef(onGone)
  gone.current = onGone
  useEffect(() => {
    if (!removed) return
    undo.current?.focus()
    return () => gone.current()
  }, [removed])
  return (
    <div aria-live="polite">
      {removed && (
        <p className="removed">
          {w.deleted(removed.title)}
          <button ref={undo} type="button" className="button" onClick={removed.putBack}>
            {w.undo}
          </button>
        </p>
      )}
    </div>
  )
}
