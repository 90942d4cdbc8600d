import { act } from "../../plan/act"
import type { Conflict } from "../../service/conflicts"
import { canBeTaken, cureEdit } from "../../service/cureEdit"
import type { Cure } from "../../service/cures"
import type { TimedPlan } from "../../service/timedPlan"
import { useCures } from "./useCures"

type Timed = Extract<TimedPlan, { ok: true }>

/** What cannot be kept, each with the cures that work, cheapest first: one touch, one undo. */
export function ConflictList({ timed }: { timed: Timed }) {
  const { conflicts } = timed
  return (
    <section aria-labelledby="conflicts-title">
      <h2 id="conflicts-title">
        {conflicts.length === 0
          ? "Nothing is in the way"
          : `${conflicts.length === 1 ? "One thing" : `${conflicts.length} things`} to settle`}
      </h2>
      {conflicts.map((conflict) => (
        <OneConflict key={conflict.rule} conflict={conflict} timed={timed} />
      ))}
    </section>
  )
}

function OneConflict({ conflict, timed }: { conflict: Conflict; timed: Timed }) {
  const cures = useCures(timed.service, conflict.rule)
  return (
    <div className="conflict">
      <p>
        <strong>{conflict.why}</strong>
      </p>
      {cures === null && <p>Working out what settles it…</p>}
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

function CureButton({ cure, timed }: { cure: Cure; timed: Timed }) {
  if (!canBeTaken(cure)) return <span className="advice">{cure.label}</span>
  return (
    <button type="button" className="button" onClick={() => act(cure.label, cureEdit(cure, timed.service))}>
      {cure.label}
    </button>
  )
}
