import { useEffect, useRef, useState } from "react"
import { letters } from "../../core/document/limits"
import type { ShelfEntry } from "../../storage/shelfList"
import { planTitle } from "./shelfActions"
import type { ShelfOnScreen } from "./useShelf"

type Props = { entry: ShelfEntry; isOpen: boolean; shelf: ShelfOnScreen; onOpened: () => void }

const moment = new Intl.DateTimeFormat("en-GB", { dateStyle: "medium", timeStyle: "short" })

/** One plan of the shelf and what can be done with it. */
export function ShelfRow({ entry, isOpen, shelf, onOpened }: Props) {
  const [renaming, setRenaming] = useState(false)
  const title = planTitle(entry)
  const renameButton = useRef<HTMLButtonElement>(null)
  const stopRenaming = () => {
    setRenaming(false)
    renameButton.current?.focus()
  }
  return (
    <li>
      {renaming ? (
        <NewName
          name={entry.name}
          onCommit={(name) => {
            if (name !== entry.name) shelf.rename(entry.id, name)
            stopRenaming()
          }}
          onCancel={stopRenaming}
        />
      ) : (
        <button
          type="button"
          className="button quiet shelf-name"
          aria-current={isOpen}
          onClick={async () => (isOpen || (await shelf.open(entry.id))) && onOpened()}
        >
          <b>{title}</b>
          <span className="aside">
            {isOpen && "open now, "}
            {entry.initials && `${entry.initials}, `}
            {moment.format(new Date(entry.savedAt))}
          </span>
        </button>
      )}
      <div className="actions">
        <button
          type="button"
          ref={renameButton}
          className="button quiet"
          aria-label={`Rename ${title}`}
          onClick={() => setRenaming(true)}
        >
          Rename
        </button>
        <button
          type="button"
          className="button quiet"
          aria-label={`Duplicate ${title}`}
          onClick={() => shelf.duplicate(entry.id)}
        >
          Duplicate
        </button>
        <button
          type="button"
          className="button quiet"
          aria-label={`Delete ${title}`}
          onClick={() => shelf.remove(entry.id, title)}
        >
          Delete
        </button>
      </div>
    </li>
  )
}

type NameProps = { name: string; onCommit: (name: string) => void; onCancel: () => void }

/** Enter keeps the new name, Escape the old one. */
function NewName({ name, onCommit, onCancel }: NameProps) {
  const input = useRef<HTMLInputElement>(null)
  useEffect(() => input.current?.select(), [])
  return (
    <form
      className="field new-name"
      onSubmit={(event) => {
        event.preventDefault()
        onCommit(input.current?.value.trim() ?? name)
      }}
    >
      <input
        ref={input}
        aria-label="New name"
        defaultValue={name}
        maxLength={letters.name}
        autoComplete="off"
        onKeyDown={(event) => {
          if (event.key !== "Escape") return
          // The dialog stays open.
          event.preventDefault()
          event.stopPropagation()
          onCancel()
        }}
      />
      <button type="submit" className="button">
        Keep
      </button>
    </form>
  )
}
