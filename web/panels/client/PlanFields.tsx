import { letters } from "../../core/document/limits"
import { setPlanDetails } from "../../core/edits/plan/setPlanDetails"
import { commit } from "../../session/commit"
import { usePlan } from "../../session/usePlan"
import { DateField } from "../fields/DateField"
import { TextField } from "../fields/TextField"

/** What the plan is called, for which day, and for whom. */
export function PlanFields() {
  const name = usePlan((plan) => plan.name)
  const date = usePlan((plan) => plan.date)
  const initials = usePlan((plan) => plan.client.initials)
  return (
    <section aria-labelledby="plan-title">
      <h2 id="plan-title">Plan</h2>
      <TextField
        name="Name of the plan"
        value={name}
        most={letters.name}
        onCommit={(name) => commit("Rename the plan", setPlanDetails({ name }))}
      />
      <div className="pairs">
        <DateField
          name="Day"
          value={date}
          onCommit={(date) => commit("Change the day", setPlanDetails({ date }))}
        />
        <TextField
          name="Initials"
          value={initials}
          most={letters.initials}
          hint="Initials only: the map hangs where others read it."
          onCommit={(initials) => commit("Change the initials", setPlanDetails({ client: { initials } }))}
        />
      </div>
    </section>
  )
}
