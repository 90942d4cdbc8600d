import { clockText } from "../../core/chair/callWords"
import { type ChairState, chairStore, tap } from "../../session/chair/chairStore"
import { Ticking } from "../../session/chair/Ticking"
import { useChair, useService } from "../../session/chair/useChair"
import { leaveChair } from "./chairActions"

type Props = { stage: "start" | "running" | "end"; onAlarm: () => void }

/** The clock of the service, the way back, undo of a wrong tap, and the red button. */
export function ChairBar({ stage, onAlarm }: Props) {
  return (
    <header className="chair-bar">
      <button type="button" className="touch" onClick={leaveChair}>
        Leave
        {stage === "running" && <small>calls go on</small>}
      </button>
      {stage !== "start" && <Elapsed />}
      {stage === "running" && <UndoTap />}
      <button type="button" className="touch red" onClick={onAlarm}>
        Something is wrong
      </button>
      <Said />
    </header>
  )
}

function Elapsed() {
  return (
    <p className="elapsed">
      <span className="unseen">Time of the service </span>
      <Ticking of={chairStore} words={elapsedText} />
    </p>
  )
}

const elapsedText = ({ live }: ChairState) => clockText(live?.chair.elapsedMs ?? 0)

function UndoTap() {
  const hasTap = useService(({ log }) => log.some(({ undone }) => !undone))
  return (
    <button type="button" className="touch" disabled={!hasTap} onClick={() => tap({ kind: "undo" })}>
      Undo tap
    </button>
  )
}

/** What the clock had to say last, and whether it is on the disk. */
function Said() {
  const text = useChair(({ said }) => said?.text ?? null)
  const refused = useChair(({ said }) => said?.refused ?? false)
  const notKept = useChair((state) => state.notKept)
  return (
    <>
      {text && <p className={refused ? "said refused" : "said"}>{text}</p>}
      {notKept && (
        <p className="said refused" role="alert">
          Not kept on this device: {notKept}
        </p>
      )}
    </>
  )
}
