import "./serviceBar.css"
import { callCode } from "../../core/chair/callCode"
import { nextCall } from "../../core/chair/dueCalls"
import { isRunning } from "../../session/chair/chairStore"
import { useChair, useService } from "../../session/chair/useChair"
import { useChairKeeper } from "../../session/chair/useChairKeeper"
import { useSession } from "../../session/usePlan"
import { useWords } from "../../session/words"
import { say } from "../../words/say"
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
  const { bar, calls } = useWords().chair
  const elapsed = useService((chair) => bar.clock(chair.elapsedMs))
  const [stage, words] = useService((chair) => {
    const call = nextCall(chair)
    return call ? [call.stage, say(calls.shown, callCode(call))] : ["ahead", bar.nothingOn]
  }) ?? ["ahead", ""]
  const isElsewhere = useChair(({ hold }) => hold === "elsewhere")
  return (
    <aside className={stage === "ahead" ? "service-bar" : "service-bar now"} aria-label={bar.service}>
      <b className="service-clock">{elapsed}</b>
      <span className="service-call">
        {words}
        {isElsewhere && ` (${bar.inOtherWindow})`}
      </span>
      <button type="button" className="button" onClick={() => void goToChair()}>
        {bar.toChair}
      </button>
    </aside>
  )
}
