import type { Plan } from "../../core/document/schema"
import type { TimedPlan } from "../../core/schedule/timedPlan"
import { ChairLessons } from "../timing/ChairLessons"
import { PlannedAndReal } from "../timing/PlannedAndReal"
import { startService } from "./chairActions"

/** After the last foil: what had been planned, and what happened. */
export const ChairEnd = ({ plan, timed }: { plan: Plan; timed: TimedPlan }) => (
  <section className="chair-page page">
    <PlannedAndReal plan={plan} />
    <ChairLessons plan={plan} />
    {timed.ok && (
      <p>
        <button type="button" className="touch" onClick={() => startService(plan, timed)}>
          Start another service of this plan
        </button>
      </p>
    )}
  </section>
)
