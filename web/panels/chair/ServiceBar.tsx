import "./serviceBar.css"
import { callWords, clockText } from "../../core/chair/callWords"
import { nextCall } from "../../core/chair/dueCalls"
import { isRunning } from "../../session/chair/chairStore"
import { useChair, useService } from "../../session/chair/useChair"
import { useChairKeeper } from "../../session/chair/useChairKeeper"
import { useSession } from "../../session/usePlan"
import { useCallOut } from "./Calls"
import { goToChair } from "./chairActions"

/** On every screen but the chair's: the clock of the service that goes on, the next call, and the way back. */
export function ServiceBar() {
  useChairKeeper()
  useCallOut()
  const runs = useChair(isRunning)
  const atChair = useSession(({ screen }) => screen === "chair")
  return runs && !atChair ? <Bar /> : null
}

function Bar() {
  const elapsed = useService((chair) => clockText(chair.elapsedMs))
  const [stage, words] = useService((chair) => {
    const call = nextCall(chair)
    return call ? [call.stage, callWords(call)] : ["ahead", "Nothing is on"]
  }) ?? ["ahead", ""]
  const isElsewhere = useChair(({ hold }) => hold === "elsewhere")
  return (
    <aside className={stage === "ahead" ? "service-bar" : "service-bar now"} aria-label="Service going on">
      <b className="service-clock">{elapsed}</b>
      <span className="service-call">
        {words}
        {isElsewhere && " (in another window)"}
      </span>
      <button type="button" className="button" onClick={() => void goToChair()}>
        To the chair
      </button>
    </aside>
  )
}
