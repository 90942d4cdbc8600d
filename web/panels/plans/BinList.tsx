import { useWords } from "../../session/words"
import { binDays } from "../../storage/bin"
import { planTitle } from "./shelfActions"
import type { ShelfOnScreen } from "./useShelf"

const dayMs = 86_400_000

/** Plans that were deleted and can still be put back. */
export function BinList({ shelf }: { shelf: ShelfOnScreen }) {
  const w = useWords().plans.bin
  if (shelf.bin.length === 0) return null
  const daysLeft = (deletedAt: string) =>
    Math.max(0, Math.ceil(binDays - (Date.now() - Date.parse(deletedAt)) / dayMs))
  return (
    <details>
      <summary>{w.title(shelf.bin.length)}</summary>
      <ul className="shelf">
        {shelf.bin.map((entry) => (
          <li key={entry.id}>
            <span>
              <b>{planTitle(entry)}</b> <span className="aside">{w.days(daysLeft(entry.deletedAt))}</span>
            </span>
            <button
              type="button"
              className="button quiet"
              aria-label={w.putBackNamed(planTitle(entry))}
              onClick={() => shelf.putBack(entry.id)}
            >
              {w.putBack}
            </button>
          </li>
        ))}
      </ul>
    </details>
  )
}
