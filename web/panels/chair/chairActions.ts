import { askedAloudBy } from "../../core/chair/askedAloudBy"
import { standingOf } from "../../core/chair/chairRecord"
import { beginService, doneService, withFoilsOf } from "../../core/chair/liveService"
import { tonersOnNow } from "../../core/chair/tonerTimes"
import type { Plan } from "../../core/document/schema"
import type { AlarmTap, LookSeen } from "../../core/document/serviceRecord"
import { addAlarm } from "../../core/edits/plan/addAlarm"
import { setService } from "../../core/edits/plan/setService"
import { pieceOf } from "../../core/kinds/kindRecords"
import type { TimedPlan } from "../../core/schedule/timedPlan"
import { announceRefusal } from "../../session/announcements"
import { chairStore, isRunning, openChair, setLive, tap, tick } from "../../session/chair/chairStore"
import { readClocks } from "../../session/chair/deviceClock"
import { wakeSound } from "../../session/chair/signals"
import { commit } from "../../session/commit"
import { nowHere } from "../../session/nowHere"
import { planStore } from "../../session/planStore"
import { sessionStore } from "../../session/sessionStore"
import { problemWords, words } from "../../session/words"
import { desk, openFromShelf } from "../plans/shelfActions"

type Timed = Extract<TimedPlan, { ok: true }>

/** Minute 0: the first parting is combed. */
export function startService(plan: Plan, timed: Timed) {
  wakeSound()
  setLive(beginService(plan, timed, readClocks(), askedAloudBy(plan, nowHere())))
}

/** The running service with the foils as they are drawn now. */
export function followPlan(plan: Plan, timed: TimedPlan) {
  const { live, hold } = chairStore.getState()
  if (!live || live.planId !== plan.id || live.endedAt || hold !== "held" || !timed.ok) return
  const followed = withFoilsOf(live, plan, timed)
  if (followed !== live) setLive(followed)
}

/** Ends the service and keeps what happened with the plan; not while a foil or a toner is on. */
export function endService() {
  tick()
  const { live } = chairStore.getState()
  if (!live) return
  const { onNow } = standingOf(live.chair)
  const still = live.chair.foils.filter(({ id }) => onNow.some((on) => on.id === id))
  if (onNow.length > 0)
    return announceRefusal(
      words().chair.stillOn(
        onNow.map(({ mapNumber }) => mapNumber),
        pieceOf(still),
      ),
    )
  const toners = tonersOnNow(live.chair)
  if (toners.length > 0) return announceRefusal(words().chair.tonerStillOn(toners))
  const ended = { ...live, endedAt: new Date().toISOString() }
  const done = doneService(ended, planStore.getState().present)
  if (!commit({ chapter: "chair", code: "keep-service" }, setService(done))) return
  setLive(ended)
}

/** Back to the running service, with its own plan. */
export async function goToChair() {
  const { planId } = chairStore.getState()
  if (planId !== null && planId !== planStore.getState().present.id) {
    const opened = await openFromShelf(desk, planId)
    if (!opened.ok)
      return announceRefusal(words().chair.elsewhere.notOpened(problemWords(opened.problems[0])))
  }
  sessionStore.setState({ screen: "chair" })
}

/** The red button never waits: it takes the chair over if need be, and writes with the plan where no service goes on. */
export async function logAlarm(alarm: Omit<AlarmTap, "kind">) {
  const { planId, hold } = chairStore.getState()
  if (!isRunning(chairStore.getState())) {
    commit({ chapter: "chair", code: "keep-alarm" }, addAlarm(alarm, new Date().toISOString()))
    return
  }
  if (planId !== null && hold !== "held") await openChair(planId, true)
  tap({ kind: "alarm", ...alarm })
}

export const leaveChair = () => sessionStore.setState({ screen: "timing" })

/** Acts at its tap: the record keeps it with what was seen so far, the foil is named, and the steps open. */
export function burningAt(foil: string, seen: LookSeen | null, onBurning: (foil: string) => void) {
  const look = () => tap({ kind: "looked", foil, seen: { ...(seen ?? notSeen), comfort: "burning" } })
  const isHere = chairStore.getState().hold === "held"
  if (isHere) look()
  const logged = logAlarm({ what: "burning", foils: [foil] })
  // The red button takes the chair over where another window has it: only then is a look taken here.
  if (!isHere) void logged.then(look)
  onBurning(foil)
}

export const notSeen: LookSeen = { level: null, stretch: null, comfort: null, moist: null }
