import { act } from "../../plan/act"
import type { Conflict } from "../../service/conflicts"
import { cureEdit } from "../../service/cureEdit"
import type { Cure } from "../../service/cures"
import type { TimedPlan } from "../../service/timedPlan"
import { ClosestTogether } from "./ClosestTogether"
import { SearchProgress } from "./SearchProgress"
import { type CureSearch, useCureSearch } from "./useCureSearch"

type Timed = Extract<TimedPlan, { ok: true }>

/** What cannot be kept, each with the cures that work, cheapest first: one touch, one undo. */
export function ConflictList({ timed }: { timed: Timed }) {
  const { conflicts, service } = timed
  const { search, stop, again } = useCureSearch(service, conflicts)
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

type ConflictProps = { conflict: Conflict; timed: Timed; search: CureSearch }

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

const CureButton = ({ cure, timed }: { cure: Cure; timed: Timed }) => (
  <button type="button" className="button" onClick={() => act(cure.label, cureEdit(cure, timed.service))}>
    {cure.label}
  </button>
)
