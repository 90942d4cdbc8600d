import { useEffect, useRef, useState } from "react"
import { letters } from "../../core/fields/limits"
import { useWords } from "../../session/words"
import type { ShelfEntry } from "../../storage/records"
import { ShelfPicture } from "./ShelfPicture"
import { planTitle } from "./shelfActions"
import type { ShelfOnScreen } from "./useShelf"

type Props = {
  entry: ShelfEntry
  /** Which of those of its name and initials it is; null where no other is called the same. */
  alike: number | null
  isOpen: boolean
  shelf: ShelfOnScreen
  onOpened: () => void
}

/** One plan of the shelf and what can be done with it. */
export function ShelfRow({ entry, alike, isOpen, shelf, onOpened }: Props) {
  const w = useWords().plans.list
  const [renaming, setRenaming] = useState(false)
  const title = alike === null ? planTitle(entry) : w.numbered(planTitle(entry), alike)
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
          <ShelfPicture entry={entry} />
          <b>{title}</b>
          <span className="aside">
            {w.details([
              ...(isOpen ? [w.openNow] : []),
              ...(entry.initials ? [entry.initials] : []),
              w.moment(entry.savedAt),
            ])}
          </span>
        </button>
      )}
      <div className="actions">
        <button
          type="button"
          ref={renameButton}
          className="button quiet"
          aria-label={w.renameNamed(title)}
          onClick={() => setRenaming(true)}
        >
          {w.rename}
        </button>
        <button
          type="button"
          className="button quiet"
          aria-label={w.duplicateNamed(title)}
          onClick={async () => (await shelf.duplicate(entry.id)) && onOpened()}
        >
          {w.duplicate}
        </button>
        <button
          type="button"
          className="button quiet"
          aria-label={w.deleteNamed(title)}
          onClick={() => shelf.remove(entry.id, title)}
        >
          {w.delete}
        </button>
      </div>
    </li>
  )
}

type NameProps = { name: string; onCommit: (name: string) => void; onCancel: () => void }

/** Enter keeps the new name, Escape the old one. */
function NewName({ name, onCommit, onCancel }: NameProps) {
  const w = useWords().plans.list
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
        aria-label={w.newName}
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
        {w.save}
      </button>
    </form>
  )
}
