import type { Fix } from "../../core/fixes/fix"
import { fixEdit } from "../../core/fixes/fixEdit"
import type { Conflict } from "../../core/schedule/conflicts"
import type { TimedPlan } from "../../core/schedule/timedPlan"
import { commit } from "../../session/commit"
import { type FixSearch, useFixSearch } from "../../session/timing/useFixSearch"
import { ClosestTogether } from "./ClosestTogether"
import { SearchProgress } from "./SearchProgress"

type Timed = Extract<TimedPlan, { ok: true }>

/** What cannot be kept, each with the cures that work, cheapest first: one touch, one undo. */
export function ConflictList({ timed }: { timed: Timed }) {
  const { conflicts, service } = timed
  const { search, stop, again } = useFixSearch(service, conflicts)
  return (
    <section aria-labelledby="conflicts-title">
      <h2 id="conflicts-title">
        {conflicts.length === 0
          ? "Nothing is in the way"
          : `${conflicts.length === 1 ? "One thing" : `${conflicts.length} things`} to settle`}
      </h2>
      {conflicts.length > 0 && <SearchProgress search={search} onStop={stop} onAgain={again} />}
      {conflicts.map((conflict) => (
        <OneConflict key={conflict.rule} conflict={conflict} timed={timed} search={search} />
      ))}
      <ClosestTogether closest={search.closest} service={service} />
    </section>
  )
}

type ConflictProps = { conflict: Conflict; timed: Timed; search: FixSearch }

function OneConflict({ conflict: { rule, why }, timed, search }: ConflictProps) {
  const cures = search.cures[rule]
  return (
    <div className="conflict">
      <p>
        <strong>{why}</strong>
      </p>
      {cures?.length === 0 && <p>Nothing that Partline can change by itself settles it.</p>}
      <ul className="actions">
        {cures?.map((cure) => (
          <li key={cure.kind}>
            <CureButton cure={cure} timed={timed} />
          </li>
        ))}
      </ul>
    </div>
  )
}

const CureButton = ({ cure, timed }: { cure: Fix; timed: Timed }) => (
  <button type="button" className="button" onClick={() => commit(cure.label, fixEdit(cure, timed.service))}>
    {cure.label}
  </button>
)
