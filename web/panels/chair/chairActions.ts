import { act } from "../../plan/act"
import { announceRefusal } from "../../plan/announcements"
import { addAlarm } from "../../plan/edits/addAlarm"
import { setService } from "../../plan/edits/setService"
import { planStore } from "../../plan/planStore"
import type { Plan } from "../../plan/schema"
import { sessionStore } from "../../plan/sessionStore"
import { standingOf } from "../../service/chairRecord"
import { beginService, recordOfService, withFoilsOf } from "../../service/liveService"
import type { TimedPlan } from "../../service/timedPlan"
import { desk, openFromShelf } from "../shelfActions"
import { chairStore, isRunning, openChair, setLive, tap, tick } from "./chairStore"
import { readClocks } from "./deviceClock"
import { wakeSound } from "./signals"

type Timed = Extract<TimedPlan, { ok: true }>

/** Minute 0: the first parting is combed. */
export function startService(plan: Plan, timed: Timed) {
  wakeSound()
  setLive(beginService(plan, timed, readClocks()))
}

/** The running service with the foils as they are drawn now. */
export function followPlan(planId: string, timed: TimedPlan) {
  const { live, hold } = chairStore.getState()
  if (!live || live.planId !== planId || live.endedAt || hold !== "held" || !timed.ok) return
  const followed = withFoilsOf(live, timed)
  if (followed !== live) setLive(followed)
}

/** Ends the service and keeps what happened with the plan; not while a foil is on. */
export function endService() {
  tick()
  const { live } = chairStore.getState()
  if (!live) return
  const { onNow } = standingOf(live.chair)
  if (onNow.length > 0)
    return announceRefusal(`${onNow.map(({ name }) => name).join(", ")}: still on. Tap off or rinse first.`)
  if (!act("Keep what happened at the chair", setService(recordOfService(live)))) return
  setLive({ ...live, endedAt: new Date().toISOString() })
}

/** Back to the running service, with its own plan. */
export async function goToChair() {
  const { planId } = chairStore.getState()
  if (planId !== null && planId !== planStore.getState().present.id) {
    const opened = await openFromShelf(desk, planId)
    if (!opened.ok)
      return announceRefusal(`The plan of that service was not opened: ${opened.problems[0].expected}`)
  }
  sessionStore.setState({ screen: "chair" })
}

/** The red button never waits: it takes the chair over if need be, and writes with the plan where no service goes on. */
export async function logAlarm(what: string) {
  const { planId, hold } = chairStore.getState()
  if (!isRunning(chairStore.getState())) {
    act("Write down what went wrong", addAlarm(what, new Date().toISOString()))
    return
  }
  if (planId !== null && hold !== "held") await openChair(planId, true)
  tap({ kind: "alarm", what })
}

export const leaveChair = () => sessionStore.setState({ screen: "timing" })
