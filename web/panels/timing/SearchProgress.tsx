import type { FixSearch } from "../../session/timing/useFixSearch"

type Props = { search: FixSearch; onStop: () => void; onAgain: () => void }

/** How far the search for cures has come, and the way to call it off. */
export function SearchProgress({ search: { state, done, of }, onStop, onAgain }: Props) {
  if (state === "found") return null
  if (state === "searching")
    return (
      <div className="search">
        <progress aria-label="Working out what settles it" value={done} max={of || 1} />
        <span>Working out what settles it</span>
        <button type="button" className="button quiet" onClick={onStop}>
          Stop looking
        </button>
      </div>
    )
  return (
    <div className="search">
      <span>
        {state === "stopped" ? "The search was stopped." : "The search for what settles it did not start."}
      </span>
      <button type="button" className="button" onClick={onAgain}>
        Look again
      </button>
    </div>
  )
}
