import type { Plan } from "../../core/document/schema"
import { returnDates } from "../../core/record/returnDates"
import { useWords } from "../../session/words"

/** When the client comes back, and a plan for it. */
export function NextVisit({ plan }: { plan: Plan }) {
  const w = useWords().chair.floor.nextVisit
  const day = plan.service?.startedAt.slice(0, 10) ?? plan.date
  const isToned = plan.service?.toners?.some(({ onAtMs }) => onAtMs !== null) ?? false
  const { frame, toner, testBy } = returnDates(day, isToned)
  return (
    <section aria-labelledby="next-visit-title">
      <h2 id="next-visit-title">{w.title}</h2>
      <p>{w.when(toner ?? frame)}</p>
      <p>{w.test(testBy)}</p>
    </section>
  )
}
