import "./chair.css"
import "./chairFloor.css"
import "./alarm.css"
import { useEffect, useRef, useState } from "react"
import type { EmergencyName } from "../../../presets/chair/emergencies"
import { timedPlan } from "../../core/schedule/timedPlan"
import { isRunning, openChair } from "../../session/chair/chairStore"
import { useChair } from "../../session/chair/useChair"
import { usePlan } from "../../session/usePlan"
import { useWords } from "../../session/words"
import { ChairBar, Initials } from "./ChairBar"
import { ChairEnd } from "./ChairEnd"
import { ChairStart } from "./ChairStart"
import { followPlan, goToChair, leaveChair } from "./chairActions"
import { RedButton } from "./RedButton"
import { Running } from "./Running"
import { useTwiceGuard } from "./twiceGuard"

/** What the red button is open for; nothing chosen yet where it is about null. */
type Alarm = { about: { what: EmergencyName; foils: readonly string[] } | null } | null

const burning = (foil: string) => ({ what: "burning" as const, foils: [foil] })

/** The service as it happens, on one screen that can be read from two metres and tapped with gloves on. */
export function ChairScreen() {
  const plan = usePlan((open) => open)
  const timed = timedPlan(plan)
  const hold = useChair((state) => state.hold)
  const isOther = useChair((state) => state.planId !== plan.id && isRunning(state))
  const stage = useChair(({ live }) => (live === null ? "start" : live.endedAt ? "end" : "running"))
  const [alarm, setAlarm] = useState<Alarm>(null)
  const guard = useTwiceGuard()
  const { title } = useWords().chair
  useEffect(() => followPlan(plan, timed), [plan, timed])
  // The button that led here is gone.
  const screen = useRef<HTMLElement>(null)
  useEffect(() => {
    if (document.activeElement === document.body) screen.current?.focus({ preventScroll: true })
  }, [])
  if (alarm) return <RedButton plan={plan} about={alarm.about} onBack={() => setAlarm(null)} guard={guard} />
  if (isOther) return <OtherService onAlarm={() => setAlarm({ about: null })} />
  return (
    <main className="chair" ref={screen} tabIndex={-1} onClickCapture={guard}>
      <h1 className="unseen">{title}</h1>
      <ChairBar stage={stage} onAlarm={() => setAlarm({ about: null })} />
      {hold === "elsewhere" && <Elsewhere planId={plan.id} />}
      {hold !== "opening" && stage === "start" && <ChairStart plan={plan} timed={timed} />}
      {stage === "running" && (
        <Running plan={plan} timed={timed} onBurning={(foil) => setAlarm({ about: burning(foil) })} />
      )}
      {stage === "end" && <ChairEnd plan={plan} timed={timed} />}
    </main>
  )
}

/** One window keeps one clock: a second client's chair is opened in a second window. */
function OtherService({ onAlarm }: { onAlarm: () => void }) {
  const { title, bar, elsewhere } = useWords().chair
  return (
    <main className="chair">
      <h1 className="unseen">{title}</h1>
      <div className="chair-page">
        <Initials />
        <p className="large">{elsewhere.otherPlan}</p>
        <button type="button" className="touch giant" onClick={() => void goToChair()}>
          {elsewhere.toThat}
        </button>
        <button type="button" className="touch red" onClick={onAlarm}>
          {bar.alarm}
        </button>
        <button type="button" className="touch" onClick={leaveChair}>
          {bar.leave}
        </button>
      </div>
    </main>
  )
}

function Elsewhere({ planId }: { planId: string }) {
  const { controlled, takeOver } = useWords().chair.elsewhere
  return (
    <div className="elsewhere" role="alert">
      <p>{controlled}</p>
      <button type="button" className="touch" onClick={() => void openChair(planId, true)}>
        {takeOver}
      </button>
    </div>
  )
}
