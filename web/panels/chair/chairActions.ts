import { act } from "../../plan/act"
import { announceRefusal } from "../../plan/announcements"
import { setService } from "../../plan/edits/setService"
import type { Plan } from "../../plan/schema"
import { sessionStore } from "../../plan/sessionStore"
import { beginService, recordOfService, recordsOf, withFoilsOf } from "../../service/liveService"
import type { TimedPlan } from "../../service/timedPlan"
import { chairStore, setLive, tick } from "./chairStore"
import { readClocks } from "./deviceClock"
import { wakeSound } from "./signals"

type Timed = Extract<TimedPlan, { ok: true }>

/** Minute 0: the first parting is combed. */
export function startService(plan: Plan, timed: Timed) {
  wakeSound()
  setLive(beginService(plan, timed, readClocks()))
}

/** The running service with the foils as they are drawn now. */
export function followPlan(timed: TimedPlan) {
  const { live, hold } = chairStore.getState()
  if (!live || live.endedAt || hold !== "held" || !timed.ok) return
  const followed = withFoilsOf(live, timed)
  if (followed !== live) setLive(followed)
}

/** Ends the service and keeps what happened with the plan; not while a foil is on. */
export function endService() {
  tick()
  const { live } = chairStore.getState()
  if (!live) return
  const still = [...recordsOf(live.chair).values()].filter(
    ({ onAtMs, offAtMs }) => onAtMs !== null && offAtMs === null,
  )
  if (still.length > 0)
    return announceRefusal(`${still.map(({ name }) => name).join(", ")}: still on. Tap off or rinse first.`)
  if (!act("Keep what happened at the chair", setService(recordOfService(live)))) return
  setLive({ ...live, endedAt: new Date().toISOString() })
}

export const leaveChair = () => sessionStore.setState({ screen: "timing" })
