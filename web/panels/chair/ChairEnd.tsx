import type { Plan } from "../../core/document/schema"
import type { TimedPlan } from "../../core/schedule/timedPlan"
import { useWords } from "../../session/words"
import { ChairLessons } from "../timing/ChairLessons"
import { NextTime } from "../timing/NextTime"
import { PlannedAndReal } from "../timing/PlannedAndReal"
import { BeginService } from "./BeginService"
import { NextVisit } from "./NextVisit"
import { WeighLeft } from "./WeighLeft"

/** After the end: what is left in the bowls, the next visit, and what had been planned beside what happened. */
export const ChairEnd = ({ plan, timed }: { plan: Plan; timed: TimedPlan }) => (
  <section className="chair-page page">
    <WeighLeft plan={plan} />
    <NextVisit plan={plan} />
    <NextTime plan={plan} />
    <PlannedAndReal plan={plan} />
    <ChairLessons plan={plan} />
    {timed.ok && <Again plan={plan} timed={timed} />}
  </section>
)

function Again({ plan, timed }: { plan: Plan; timed: Extract<TimedPlan, { ok: true }> }) {
  const { again } = useWords().chair.floor
  return (
    <section className="again">
      <BeginService plan={plan} timed={timed} words={again} className="touch" />
    </section>
  )
}
