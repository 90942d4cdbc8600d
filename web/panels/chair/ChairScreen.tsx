import "./chair.css"
import "./chairFloor.css"
import "./alarm.css"
import { useEffect, useState } from "react"
import { timedPlan } from "../../core/schedule/timedPlan"
import { isRunning, openChair } from "../../session/chair/chairStore"
import { useChair } from "../../session/chair/useChair"
import { usePlan } from "../../session/usePlan"
import { ChairBar } from "./ChairBar"
import { ChairEnd } from "./ChairEnd"
import { ChairStart } from "./ChairStart"
import { followPlan, goToChair, leaveChair } from "./chairActions"
import { RedButton } from "./RedButton"
import { Running } from "./Running"

/** The service as it happens, on one screen that can be read from two metres and tapped with gloves on. */
export function ChairScreen() {
  const plan = usePlan((open) => open)
  const timed = timedPlan(plan)
  const hold = useChair((state) => state.hold)
  const isOther = useChair((state) => state.planId !== plan.id && isRunning(state))
  const stage = useChair(({ live }) => (live === null ? "start" : live.endedAt ? "end" : "running"))
  const [isAlarm, setAlarm] = useState(false)
  useEffect(() => followPlan(plan.id, timed), [plan.id, timed])
  if (isAlarm) return <RedButton plan={plan} onBack={() => setAlarm(false)} />
  if (isOther) return <OtherService onAlarm={() => setAlarm(true)} />
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

/** One window keeps one clock: a second client's chair is opened in a second window. */
const OtherService = ({ onAlarm }: { onAlarm: () => void }) => (
  <main className="chair">
    <h1 className="unseen">At the chair</h1>
    <div className="chair-page">
      <p className="large">
        The service of another plan goes on in this window. Open this plan in a second window to run both.
      </p>
      <button type="button" className="touch giant" onClick={() => void goToChair()}>
        To that service
      </button>
      <button type="button" className="touch red" onClick={onAlarm}>
        Something is wrong
      </button>
      <button type="button" className="touch" onClick={leaveChair}>
        Leave
      </button>
    </div>
  </main>
)

const Elsewhere = ({ planId }: { planId: string }) => (
  <div className="elsewhere" role="alert">
    <p>Another window holds this chair. Here it can be watched.</p>
    <button type="button" className="touch" onClick={() => void openChair(planId, true)}>
      Take it over here
    </button>
  </div>
)
