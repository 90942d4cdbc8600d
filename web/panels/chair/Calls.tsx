import { useEffect, useRef } from "react"
import { useStore } from "zustand"
import { useShallow } from "zustand/react/shallow"
import { chairHabits } from "../../../presets/chair/emergencies"
import { type Holds, holdsMix } from "../../core/cautions/clearance"
import { callCode } from "../../core/chair/callCode"
import type { Chair } from "../../core/chair/chair"
import { callsShown, type DueCall, dueCalls, isDanger, isOff } from "../../core/chair/dueCalls"
import { announce } from "../../session/announcements"
import { chairStore, tap } from "../../session/chair/chairStore"
import { type Signal, sound } from "../../session/chair/signals"
import { Ticking } from "../../session/chair/Ticking"
import { useWords, words } from "../../session/words"
import { say } from "../../words/say"

const ahead = {
  lookMs: chairHabits.callLookAheadMin * 60_000,
  limitMs: chairHabits.callLimitAheadMin * 60_000,
}
const mostShown = 3

type Now = { calls: readonly DueCall[]; shown: readonly DueCall[] }
const nothing: Now = { calls: [], shown: [] }
let remembered: (Now & { chair: Chair }) | null = null

/** What is due at this second, and how it is shown, worked out once for all who ask. */
function callsNow(): Now {
  const chair = chairStore.getState().live?.chair
  if (!chair) return nothing
  if (remembered?.chair !== chair) {
    const calls = dueCalls(chair, ahead)
    remembered = { chair, calls, shown: callsShown(calls) }
  }
  return remembered
}

/** What makes a call the same call, whatever its clock says. */
const keyOf = ({ kind, stage, bowl, ids }: DueCall) => `${kind} ${stage} ${bowl?.at ?? ids.join()}`
const callOf = (key: string) => callsNow().shown.find((call) => keyOf(call) === key)

const heatOff = { kind: "heat-off" } as const

type CallsProps = { holds: Holds; onChoose: (foil: string) => void }

/** What is due, most urgent first; a touch chooses its first foil, takes the heat away, or says that a bowl is fresh. Nothing here can be waved away: only the deed ends it. */
export function Calls({ holds, onChoose }: CallsProps) {
  const keys = useStore(
    chairStore,
    useShallow(() => callsNow().shown.map(keyOf)),
  )
  const w = useWords().chair.calls
  return (
    <ul className="calls" aria-label={w.due}>
      {keys.slice(0, mostShown).map((key) => (
        <li key={key}>
          <Call callKey={key} holds={holds} onChoose={onChoose} />
        </li>
      ))}
      {keys.length > mostShown && <li>{w.more(keys.length - mostShown)}</li>}
    </ul>
  )
}

function Call({ callKey, holds, onChoose }: CallsProps & { callKey: string }) {
  const w = useWords().chair.calls
  const call = callOf(callKey)
  if (!call) return null
  const isHeld = call.bowl !== undefined && holdsMix(holds, call.bowl.mix)
  const { stage, ids, bowl, zone } = call
  const look = isDanger(call) ? "danger" : stage === "ahead" ? "ahead" : "due"
  const answer = () =>
    ids.length > 0
      ? onChoose(ids[0])
      : tap(bowl ? { kind: "mixed", bowl: bowl.at } : zone ? { kind: "toner-off", zone } : heatOff)
  return (
    <div className={`call ${look}`}>
      <button type="button" className="touch call-words" disabled={isHeld} onClick={answer}>
        <Ticking
          of={chairStore}
          words={() => {
            const now = callOf(callKey)
            return now ? say(w.shown, callCode(now)) : ""
          }}
        />
        {bowl && <small>{w.freshBowl}</small>}
      </button>
      <Deeds call={call} holds={holds} />
    </div>
  )
}

const mostOff = 4

/** What answers a call in one tap: all foils of a check carried on, the roots of a foil on, or each foil off. */
function Deeds({ call, holds }: { call: DueCall; holds: Holds }) {
  const w = useWords().chair.calls
  const { kind, ids, foils } = call
  if (kind === "look")
    return (
      <button type="button" className="touch" onClick={() => tap({ kind: "carried-on", foils: ids })}>
        {w.carryOn(foils, call.piece)}
      </button>
    )
  if (kind === "roots")
    return (
      <button
        type="button"
        className="touch"
        disabled={holdsMix(holds, call.mix ?? "")}
        onClick={() => tap({ kind: "roots-on", foil: ids[0] })}
      >
        {w.rootsOn(foils[0])}
      </button>
    )
  if (!isOff(call)) return null
  return ids.slice(0, mostOff).map((foil, at) => (
    <button key={foil} type="button" className="touch" onClick={() => tap({ kind: "off", foil })}>
      {w.off(foils[at])}
    </button>
  ))
}

const signals: Record<DueCall["stage"], Signal> = { ahead: "soon", now: "now", late: "late" }

/** A stale bowl is told of as urgently as a look that is due: the loudest is for foils past their limit. */
const bowlSignals: Record<DueCall["stage"], Signal> = { ahead: "soon", now: "now", late: "now" }

/** Says and sounds each call once a stage; what is past its limit again and again, until it is off. */
export function useCallOut() {
  const called = useRef(new Map<string, number>())
  useEffect(() => {
    const callOut = () => {
      const { hold } = chairStore.getState()
      if (hold !== "held" && document.visibilityState === "hidden") return
      const nowMs = chairStore.getState().live?.chair.elapsedMs ?? 0
      for (const call of callsNow().calls) {
        const key = keyOf(call)
        const before = called.current.get(key)
        const isOver = isDanger(call) && call.stage !== "ahead"
        const isAgain =
          isOver && before !== undefined && nowMs - before >= chairHabits.callAgainSeconds * 1000
        if (before !== undefined && !isAgain) continue
        called.current.set(key, nowMs)
        announce(say(words().chair.calls.spoken, callCode(call)))
        sound(isOver ? "late" : call.kind === "bowl" ? bowlSignals[call.stage] : signals[call.stage])
      }
    }
    return chairStore.subscribe(callOut)
  }, [])
}
