import { worksInTwo } from "../../core/chair/inHand"
import { chairSaid } from "../../session/chair/chairSaid"
import { chairStore, takeInHand, tap } from "../../session/chair/chairStore"
import { Ticking } from "../../session/chair/Ticking"
import { useChair, useService } from "../../session/chair/useChair"
import { usePlan } from "../../session/usePlan"
import { notKeptWords, useWords } from "../../session/words"
import { leaveChair } from "./chairActions"

type Props = { stage: "start" | "running" | "end"; onAlarm: () => void }

/** The clock of the service, the way back, undo of a wrong tap, and the red button. */
export function ChairBar({ stage, onAlarm }: Props) {
  const w = useWords().chair.bar
  return (
    <header className="chair-bar">
      <button type="button" className="touch" onClick={leaveChair}>
        {w.leave}
        {stage === "running" && <small>{w.alarmsStay}</small>}
      </button>
      <Initials />
      {stage !== "start" && <Elapsed />}
      {stage === "running" && <UndoTap />}
      {stage === "running" && <InHand />}
      <button type="button" className="touch red" onClick={onAlarm}>
        {w.alarm}
      </button>
      <Said />
    </header>
  )
}

/** Whose service it is, or whose it will be: on the screen of a salon there may be two. */
export function Initials() {
  const open = usePlan(({ client }) => client.initials)
  const initials = useChair(({ live }) => (live ? (live.initials ?? "") : open))
  return initials ? <p className="initials">{initials}</p> : null
}

function Elapsed() {
  const { time, clock } = useWords().chair.bar
  return (
    <p className="elapsed">
      <span className="unseen">{time} </span>
      <Ticking of={chairStore} words={({ live }) => clock(live?.chair.elapsedMs ?? 0)} />
    </p>
  )
}

function UndoTap() {
  const hasTap = useService(({ log }) => log.some(({ undone }) => !undone))
  const { undo } = useWords().chair.bar
  return (
    <button type="button" className="touch" disabled={!hasTap} onClick={() => tap({ kind: "undo" })}>
      {undo}
    </button>
  )
}

/** Where two work, who taps: checks, bowls and rinses are kept as theirs, and a tap of a lane puts its person here. */
function InHand() {
  const isTwo = useService(worksInTwo) ?? false
  const hand = useService((chair) => chair.hand)
  const [first, second] = usePlan(({ timing }) => timing?.people) ?? []
  const w = useWords().chair.floor
  if (!isTwo) return null
  const people = [
    { who: 1 as const, name: first?.trim() || w.colourist },
    { who: 2 as const, name: second?.trim() || w.assistant },
  ]
  return (
    <fieldset className="touches who-taps">
      <legend className="label">{w.whoTaps}</legend>
      {people.map(({ who, name }) => (
        <button
          key={who}
          type="button"
          className="touch"
          aria-pressed={hand === who}
          onClick={() => takeInHand(who)}
        >
          {w.lane(name)}
        </button>
      ))}
    </fieldset>
  )
}

/** What the clock had to say last, and whether it is on the disk. */
export function Said() {
  const w = useWords().chair
  const what = useChair(({ said }) => said?.what ?? null)
  const refused = useChair(({ said }) => said?.refused ?? false)
  const foils = useChair(({ live }) => live?.chair.foils) ?? []
  const notKept = useChair((state) => state.notKept)
  return (
    <>
      {what && <p className={refused ? "said refused" : "said"}>{chairSaid(what, w, foils)}</p>}
      {notKept && (
        <p className="said refused" role="alert">
          {w.bar.notKept(notKeptWords(notKept))}
        </p>
      )}
    </>
  )
}
