import "./serviceBar.css"
import { callCode } from "../../core/chair/callCode"
import { isDanger, nextCall } from "../../core/chair/dueCalls"
import { pieceOf } from "../../core/kinds/kindRecords"
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
  const [look, words] = useService((chair) => {
    const call = nextCall(chair)
    return call
      ? [
          isDanger(call) ? "danger" : call.stage === "ahead" ? "ahead" : "due",
          say(calls.shown, callCode(call)),
        ]
      : ["ahead", bar.nothingOn(pieceOf(chair.foils))]
  }) ?? ["ahead", ""]
  const initials = useChair(({ live }) => live?.initials ?? "")
  const isElsewhere = useChair(({ hold }) => hold === "elsewhere")
  return (
    <aside className={`service-bar ${look}`} aria-label={bar.service}>
      {initials && <b className="service-initials">{initials}</b>}
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
