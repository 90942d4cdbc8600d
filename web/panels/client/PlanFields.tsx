import { setInitials, setPlanDetails } from "../../core/edits/plan/setPlanDetails"
import { letters } from "../../core/fields/limits"
import { commit } from "../../session/commit"
import { usePlan } from "../../session/usePlan"
import { useWords } from "../../session/words"
import { DateField } from "../fields/DateField"
import { TextField } from "../fields/TextField"

/** What the plan is called, for which day, and for whom. */
export function PlanFields() {
  const { plan: said } = useWords().client
  const name = usePlan((plan) => plan.name)
  const date = usePlan((plan) => plan.date)
  const initials = usePlan((plan) => plan.client.initials)
  return (
    <section aria-labelledby="plan-title">
      <h2 id="plan-title">{said.title}</h2>
      <TextField
        name={said.name}
        value={name}
        most={letters.name}
        onCommit={(name) => commit({ chapter: "client", code: "rename-plan" }, setPlanDetails({ name }))}
      />
      <div className="pairs">
        <DateField
          name={said.day}
          value={date}
          onCommit={(date) => commit({ chapter: "client", code: "set-day" }, setPlanDetails({ date }))}
        />
        <TextField
          name={said.initials}
          value={initials}
          most={letters.initials}
          hint={said.initialsHint}
          onCommit={(initials) => commit({ chapter: "client", code: "set-initials" }, setInitials(initials))}
        />
      </div>
    </section>
  )
}
