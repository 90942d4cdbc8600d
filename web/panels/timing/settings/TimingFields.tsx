import { isFoil } from "../../../../geometry/section/section"
import type { Plan } from "../../../core/document/schema"
import type { TimingChoices } from "../../../core/document/timingChoices"
import { usualTiming } from "../../../core/document/usualTiming"
import { pieceOf } from "../../../core/kinds/kindRecords"
import { heatRefusal } from "../../../core/schedule/heatRefusal"
import { timedPlan } from "../../../core/schedule/timedPlan"
import { useWords } from "../../../session/words"
import { Choices } from "../../fields/Choices"
import { AppointmentFields } from "./AppointmentFields"
import { BreakFields } from "./BreakFields"
import { changeTiming } from "./changeTiming"
import { HeatChoice } from "./HeatChoice"
import { LiftFields } from "./LiftFields"
import { PaceChoice } from "./PaceChoice"
import { PeopleFields } from "./PeopleFields"

/** How fast, who works, how the foils come off, and what is wanted of the hair. */
export function TimingFields({ plan }: { plan: Plan }) {
  const w = useWords().timing.settings
  const timing: TimingChoices = plan.timing ?? usualTiming
  const timed = timedPlan(plan)
  const refusal = timed.ok ? heatRefusal(timed.service) : null
  const rinses = [
    { value: "each" as const, label: w.each },
    { value: "together" as const, label: w.together },
  ]
  return (
    <div className="timing-fields">
      <PaceChoice timing={timing} change={changeTiming} />
      <PeopleFields timing={timing} change={changeTiming} />
      <Choices
        legend={w.off(pieceOf(plan.sections.filter(isFoil)))}
        options={rinses}
        value={timing.rinse}
        onChange={(rinse) => changeTiming("set-rinse", { rinse })}
      />
      <LiftFields plan={plan} change={changeTiming} />
      <AppointmentFields timing={timing} change={changeTiming} />
      <HeatChoice timing={timing} refusal={refusal} change={changeTiming} />
      <BreakFields timing={timing} change={changeTiming} />
    </div>
  )
}
