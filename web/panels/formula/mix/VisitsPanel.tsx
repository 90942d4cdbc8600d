import { visitsOfPlan } from "../../../core/bowls/visits"
import { planToday } from "../../../core/edits/plan/planToday"
import { commit } from "../../../session/commit"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"

/** The visits that the lift takes where one does not give it: what today, what next and when. */
export function VisitsPanel() {
  const w = useWords().formula.mixing
  const plan = usePlan((open) => open)
  const visits = visitsOfPlan(plan)
  const [today, ...later] = visits
  if (!today || later.length === 0) return null
  const next = later.map(w.visits.note).join("\n")
  return (
    <section aria-labelledby="visits-title">
      <h2 id="visits-title">{w.visits.title(visits.length)}</h2>
      <ol className="visits">
        {visits.map((stage, index) => (
          <li key={stage.fromLevel}>{w.visit({ ...stage, visit: index + 1 })}</li>
        ))}
      </ol>
      <div className="actions">
        <button
          type="button"
          className="button"
          onClick={() =>
            commit(
              { chapter: "formula", code: "plan-today", level: today.toLevel },
              planToday(today.toLevel, next),
            )
          }
        >
          {w.visits.today(today.toLevel)}
        </button>
      </div>
    </section>
  )
}
