import { useEffect, useRef } from "react"
import { useStore } from "zustand"
import { useShallow } from "zustand/react/shallow"
import { chairHabits } from "../../../presets/chair/emergencies"
import { callWords, spokenCall } from "../../core/chair/callWords"
import type { Chair } from "../../core/chair/chair"
import { callsShown, type DueCall, dueCalls } from "../../core/chair/dueCalls"
import { announce } from "../../session/announcements"
import { chairStore, tap } from "../../session/chair/chairStore"
import { type Signal, sound } from "../../session/chair/signals"
import { Ticking } from "../../session/chair/Ticking"

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

/** What is due, most urgent first; a touch chooses its first foil, takes the heat away, or says that a bowl is fresh. Nothing here can be waved away: only the deed ends it. */
export function Calls({ onChoose }: { onChoose: (foil: string) => void }) {
  const keys = useStore(
    chairStore,
    useShallow(() => callsNow().shown.map(keyOf)),
  )
  return (
    <ul className="calls" aria-label="Due">
      {keys.slice(0, mostShown).map((key) => (
        <li key={key}>
          <Call callKey={key} onChoose={onChoose} />
        </li>
      ))}
      {keys.length > mostShown && <li>and {keys.length - mostShown} more</li>}
    </ul>
  )
}

function Call({ callKey, onChoose }: { callKey: string; onChoose: (foil: string) => void }) {
  const call = callOf(callKey)
  if (!call) return null
  const { stage, ids, bowl } = call
  const answer = () =>
    ids.length > 0 ? onChoose(ids[0]) : tap(bowl ? { kind: "mixed", bowl: bowl.at } : heatOff)
  return (
    <button type="button" className={`touch call ${stage}`} onClick={answer}>
      <Ticking
        of={chairStore}
        words={() => {
          const now = callOf(callKey)
          return now ? callWords(now) : ""
        }}
      />
      {bowl && <small>tap once it is mixed afresh</small>}
    </button>
  )
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
        const isOver = call.kind !== "look" && call.kind !== "bowl" && call.stage !== "ahead"
        const isAgain =
          isOver && before !== undefined && nowMs - before >= chairHabits.callAgainSeconds * 1000
        if (before !== undefined && !isAgain) continue
        called.current.set(key, nowMs)
        announce(spokenCall(call))
        sound(isOver ? "late" : call.kind === "bowl" ? bowlSignals[call.stage] : signals[call.stage])
      }
    }
    return chairStore.subscribe(callOut)
  }, [])
}
