import "./chair.css"
import { useEffect, useState } from "react"
import { usePlan } from "../../plan/usePlan"
import { timedPlan } from "../../service/timedPlan"
import { useCallOut } from "./Calls"
import { ChairBar } from "./ChairBar"
import { ChairEnd } from "./ChairEnd"
import { ChairStart } from "./ChairStart"
import { followPlan } from "./chairActions"
import { openChair } from "./chairStore"
import { RedButton } from "./RedButton"
import { Running } from "./Running"
import { keepAwake } from "./signals"
import { useChair, useOpenChair } from "./useChair"

/** The service as it happens, on one screen that can be read from two metres and tapped with gloves on. */
export function ChairScreen() {
  const plan = usePlan((open) => open)
  const timed = timedPlan(plan)
  useOpenChair(plan.id)
  const hold = useChair((state) => state.hold)
  const stage = useChair(({ live }) => (live === null ? "start" : live.endedAt ? "end" : "running"))
  // Here, not beside the foils: the red button's page must not silence a limit.
  useCallOut()
  const [isAlarm, setAlarm] = useState(false)
  useEffect(() => followPlan(timed), [timed])
  useEffect(() => (stage === "running" ? keepAwake() : undefined), [stage])
  if (isAlarm) return <RedButton onBack={() => setAlarm(false)} />
  return (
    <main className="chair">
      <h1 className="unseen">At the chair</h1>
      <ChairBar stage={stage} onAlarm={() => setAlarm(true)} />
      {hold === "elsewhere" && <Elsewhere planId={plan.id} />}
      {hold !== "opening" && stage === "start" && <ChairStart plan={plan} timed={timed} />}
      {stage === "running" && <Running plan={plan} timed={timed} />}
      {stage === "end" && <ChairEnd plan={plan} timed={timed} />}
    </main>
  )
}

const Elsewhere = ({ planId }: { planId: string }) => (
  <div className="elsewhere" role="alert">
    <p>Another window holds this chair. Here it can be watched.</p>
    <button type="button" className="touch" onClick={() => void openChair(planId, true)}>
      Take it over here
    </button>
  </div>
)
