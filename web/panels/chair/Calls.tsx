import { useEffect, useRef } from "react"
import { useStore } from "zustand"
import { useShallow } from "zustand/react/shallow"
import { chairHabits } from "../../../presets/emergencies"
import { looks } from "../../../presets/pace"
import { announce } from "../../plan/announcements"
import { callWords, spokenCall } from "../../service/callWords"
import type { Chair } from "../../service/chairClock"
import { callsShown, type DueCall, dueCalls } from "../../service/dueCalls"
import { chairStore, tap } from "./chairStore"
import { type Signal, sound } from "./signals"

const ahead = {
  lookMs: chairHabits.callLookAheadMin * 60_000,
  limitMs: chairHabits.callLimitAheadMin * 60_000,
}
const mostShown = 3

let remembered: { chair: Chair; calls: readonly DueCall[] } | null = null

/** What is due at this second, worked out once for all who ask. */
function callsNow(): readonly DueCall[] {
  const chair = chairStore.getState().live?.chair
  if (!chair) return []
  if (remembered?.chair !== chair) remembered = { chair, calls: dueCalls(chair, looks.everyMin, ahead) }
  return remembered.calls
}

type Shown = { stage: DueCall["stage"]; text: string; foil?: string; bowl?: number }

const shownOf = (call: DueCall): Shown => ({
  stage: call.stage,
  text: callWords(call),
  foil: call.ids[0],
  ...(call.bowl && { bowl: call.bowl.at }),
})

const heatOff = { kind: "heat-off" } as const

/** What is due, most urgent first; a touch chooses its first foil, takes the heat away, or says that a bowl is fresh. Nothing here can be waved away: only the deed ends it. */
export function Calls({ onChoose }: { onChoose: (foil: string) => void }) {
  // As plain words: only a second that says something else draws anything.
  const calls = useStore(
    chairStore,
    useShallow(() => callsShown(callsNow()).map((call) => JSON.stringify(shownOf(call)))),
  )
  const shown = calls.slice(0, mostShown).map((call): Shown => JSON.parse(call))
  return (
    <ul className="calls" aria-label="Due">
      {shown.map(({ stage, foil, bowl, text }) => (
        <li key={text.replace(/\d+:\d+/, "")}>
          <button
            type="button"
            className={`touch call ${stage}`}
            onClick={() =>
              foil ? onChoose(foil) : tap(bowl === undefined ? heatOff : { kind: "mixed", bowl })
            }
          >
            {text}
            {bowl !== undefined && <small>tap once it is mixed afresh</small>}
          </button>
        </li>
      ))}
      {calls.length > mostShown && <li>and {calls.length - mostShown} more</li>}
    </ul>
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
      for (const call of callsNow()) {
        const key = `${call.kind} ${call.stage} ${call.bowl?.at ?? call.ids.join()}`
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
