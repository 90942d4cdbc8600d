import { standingOf } from "../../core/chair/chairRecord"
import { beginService, recordOfService, withFoilsOf } from "../../core/chair/liveService"
import type { Plan } from "../../core/document/schema"
import { addAlarm } from "../../core/edits/plan/addAlarm"
import { setService } from "../../core/edits/plan/setService"
import type { TimedPlan } from "../../core/schedule/timedPlan"
import { announceRefusal } from "../../session/announcements"
import { chairStore, isRunning, openChair, setLive, tap, tick } from "../../session/chair/chairStore"
import { readClocks } from "../../session/chair/deviceClock"
import { wakeSound } from "../../session/chair/signals"
import { commit } from "../../session/commit"
import { planStore } from "../../session/planStore"
import { sessionStore } from "../../session/sessionStore"
import { desk, openFromShelf } from "../plans/shelfActions"

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
  if (!commit("Keep what happened at the chair", setService(recordOfService(live)))) return
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
    commit("Write down what went wrong", addAlarm(what, new Date().toISOString()))
    return
  }
  if (planId !== null && hold !== "held") await openChair(planId, true)
  tap({ kind: "alarm", what })
}

export const leaveChair = () => sessionStore.setState({ screen: "timing" })
