import { useEffect, useRef } from "react"
import { useStore } from "zustand"
import { useShallow } from "zustand/react/shallow"
import { chairHabits } from "../../../presets/emergencies"
import { looks } from "../../../presets/pace"
import { announce } from "../../plan/announcements"
import { callWords, type DueCall, dueCalls, spokenCall } from "../../service/dueCalls"
import { chairStore, tap } from "./chairStore"
import { type Signal, sound } from "./signals"

const ahead = {
  lookMs: chairHabits.callLookAheadMin * 60_000,
  limitMs: chairHabits.callLimitAheadMin * 60_000,
}
const mostShown = 3

const callsNow = (): DueCall[] => {
  const chair = chairStore.getState().live?.chair
  return chair ? dueCalls(chair, looks.everyMin, ahead) : []
}

/** What is due, most urgent first; a touch chooses its first foil, or takes the heat away. Nothing here can be waved away: only the deed ends it. */
export function Calls({ onChoose }: { onChoose: (foil: string) => void }) {
  const words = useStore(
    chairStore,
    useShallow(() => callsNow().map((call) => `${call.stage}|${call.ids[0] ?? ""}|${callWords(call)}`)),
  )
  const shown = words.slice(0, mostShown).map((line) => line.split("|"))
  return (
    <ul className="calls" aria-label="Due">
      {shown.map(([stage, id, text]) => (
        <li key={text.replace(/\d+:\d+/, "")}>
          <button
            type="button"
            className={`touch call ${stage}`}
            onClick={() => (id === "" ? tap({ kind: "heat-off" }) : onChoose(id))}
          >
            {text}
          </button>
        </li>
      ))}
      {words.length > mostShown && <li>and {words.length - mostShown} more</li>}
    </ul>
  )
}

const signals: Record<DueCall["stage"], Signal> = { ahead: "soon", now: "now", late: "late" }

/** Says and sounds each call once a stage; what is past its limit again and again, until it is off. */
export function useCallOut() {
  const called = useRef(new Map<string, number>())
  useEffect(() => {
    const callOut = () => {
      const { hold } = chairStore.getState()
      if (hold !== "held" && document.visibilityState === "hidden") return
      const nowMs = chairStore.getState().live?.chair.elapsedMs ?? 0
      for (const call of callsNow()) {
        const key = `${call.kind} ${call.stage} ${call.ids.join()}`
        const before = called.current.get(key)
        const isOver = call.kind !== "look" && call.stage !== "ahead"
        const isAgain =
          isOver && before !== undefined && nowMs - before >= chairHabits.callAgainSeconds * 1000
        if (before !== undefined && !isAgain) continue
        called.current.set(key, nowMs)
        announce(spokenCall(call))
        sound(isOver ? "late" : signals[call.stage])
      }
    }
    return chairStore.subscribe(callOut)
  }, [])
}
