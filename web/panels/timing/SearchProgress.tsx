import type { FixSearch } from "../../session/timing/useFixSearch"
import { useWords } from "../../session/words"

type Props = { search: FixSearch; onStop: () => void; onAgain: () => void }

/** How far the search for cures has come, and the way to call it off. */
export function SearchProgress({ search: { state, done, of }, onStop, onAgain }: Props) {
  const w = useWords().timing.search
  if (state === "found") return null
  if (state === "searching")
    return (
      <div className="search">
        <progress aria-label={w.working} value={done} max={of || 1} />
        <span>{w.working}</span>
        <button type="button" className="button quiet" onClick={onStop}>
          {w.stop}
        </button>
      </div>
    )
  return (
    <div className="search">
      <span>{state === "stopped" ? w.stopped : w.failed}</span>
      <button type="button" className="button" onClick={onAgain}>
        {w.again}
      </button>
    </div>
  )
}
