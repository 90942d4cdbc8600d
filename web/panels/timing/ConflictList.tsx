import { calledBy } from "../../core/kinds/saidPiece"
import type { Conflict } from "../../core/schedule/conflicts"
import type { TimedPlan } from "../../core/schedule/timedPlan"
import { type FixSearch, useFixSearch } from "../../session/timing/useFixSearch"
import { useWords } from "../../session/words"
import { say } from "../../words/say"
import { ClosestTogether } from "./ClosestTogether"
import { FixButton } from "./FixButton"
import { SearchProgress } from "./SearchProgress"

type Timed = Extract<TimedPlan, { ok: true }>

/** What cannot be kept, each with the fixes that work, least harm first: one touch, one undo. */
export function ConflictList({ timed }: { timed: Timed }) {
  const { conflicts, service } = timed
  const { search, stop, again } = useFixSearch(service, conflicts)
  const w = useWords().timing
  return (
    <section className="clashes" aria-labelledby="conflicts-title">
      <h2 id="conflicts-title">{w.clashTitle(conflicts.length)}</h2>
      {conflicts.length > 0 && <SearchProgress search={search} onStop={stop} onAgain={again} />}
      {conflicts.map((conflict) => (
        <OneConflict key={conflict.code} conflict={conflict} timed={timed} search={search} />
      ))}
      <ClosestTogether closest={search.closest} service={service} />
    </section>
  )
}

type ConflictProps = { conflict: Conflict; timed: Timed; search: FixSearch }

function OneConflict({ conflict, timed, search }: ConflictProps) {
  const fixes = search.cures[conflict.code]
  const w = useWords().timing
  return (
    <div className="conflict">
      <p>
        <strong>{say(w.clashes, calledBy(conflict, timed.service.foils))}</strong>
      </p>
      {fixes?.length === 0 && <p>{w.noFix}</p>}
      <ul className="actions">
        {fixes?.map((fix) => (
          <li key={fix.code}>
            <FixButton fix={fix} service={timed.service} />
          </li>
        ))}
      </ul>
    </div>
  )
}
