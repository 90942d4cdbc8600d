import { createStore } from "zustand/vanilla"
import type { Tap } from "../../core/chair/chair"
import { type Answer, passTime, tapChair } from "../../core/chair/chairClock"
import { type LiveService, liveServiceOf } from "../../core/chair/liveService"
import { newId } from "../../core/document/newId"
import type { NotKept } from "../../core/fields/notKept"
import { browserShelf } from "../../storage/browserShelf"
import { type ChairLock, holdChair } from "../../storage/chairLock"
import { forget, laterOf, note, noted } from "../../storage/chairNote"
import { forgetTime, goesOnFrom, noteTime, withNotedTime } from "../../storage/chairTimeNote"
import { keepService, readService } from "../../storage/shelfServices"
import { announce, announceRefusal } from "../announcements"
import { words } from "../words"
import { chairSaid, type Said } from "./chairSaid"
import { readClocks } from "./deviceClock"

/** The chair of a plan: opening, held by this window, or watched while another window holds it; null for no chair. */
export type ChairState = {
  planId: string | null
  hold: "opening" | "held" | "elsewhere"
  live: LiveService | null
  /** The last thing the clock had to say, and whether it refused a tap. */
  said: { what: readonly Said[]; refused: boolean } | null
  /** Why the service is not on the disk. */
  notKept: NotKept | null
}

const closed: ChairState = { planId: null, hold: "opening", live: null, said: null, notKept: null }
export const chairStore = createStore<ChairState>(() => closed)

/** Whether a service goes on, in this window or in the one that is watched. */
export const isRunning = ({ live }: Pick<ChairState, "live">) => live !== null && live.endedAt === null

const knownRevs = new Set<string>()
/** The writing that the service on the screen goes on from. */
let rev: string | null = null
let lock: ChairLock | null = null
/** Counts openings and closings: an answer that comes after the next one is too late. */
let turn = 0

/** Takes the chair of a plan for this window, or watches it; what was kept of a service goes on. */
export async function openChair(planId: string, steal = false) {
  if (chairStore.getState().planId !== planId) closeChair()
  const mine = ++turn
  chairStore.setState({ planId })
  const held = await holdChair(planId, { steal, onLost: () => watchFrom(mine) })
  const live = await readKept(planId)
  if (mine !== turn) return held?.release()
  lock = held
  chairStore.setState({ ...closed, planId, hold: held ? "held" : "elsewhere", live }, true)
  tick()
}

const watchFrom = (mine: number) => {
  if (mine === turn) chairStore.setState({ hold: "elsewhere" })
}

/** Goes on with a watched service once the other window is gone; browsers without locks cannot tell. */
export async function takeIfFree(planId: string) {
  const mine = turn
  const isWatched = () => mine === turn && chairStore.getState().hold === "elsewhere"
  if (!navigator.locks || !isWatched()) return
  const held = await holdChair(planId, { steal: false, onLost: () => watchFrom(mine) })
  const live = held && (await readKept(planId))
  if (!held || !isWatched()) return held?.release()
  lock = held
  chairStore.setState({ hold: "held", live })
}

export function closeChair() {
  turn += 1
  keep()
  lock?.release()
  lock = null
  rev = null
  chairStore.setState(closed, true)
}

/** What the other window has made of the service since: read anew only when it has written something. */
export async function watchChair(planId: string) {
  if (rev !== null && goesOnFrom(planId, rev)) return
  const live = await readKept(planId)
  const now = chairStore.getState()
  if (now.hold === "elsewhere" && now.planId === planId) chairStore.setState({ live })
}

async function readKept(planId: string): Promise<LiveService | null> {
  const kept = await readService(browserShelf, planId).catch(() => undefined)
  if (kept) knownRevs.add(kept.rev)
  const value = kept && liveServiceOf(kept.value)
  const found = laterOf(noted(planId), value ? { rev: kept.rev, value } : null)
  if (!found) return null
  knownRevs.add(found.rev)
  rev = found.rev
  return withNotedTime(found.value, rev)
}

/** Puts a service on the screen and on the disk in the same tick. */
export function setLive(live: LiveService) {
  chairStore.setState({ live })
  keep()
}

export function tap(what: Tap | { kind: "undo" }) {
  const { live, hold } = chairStore.getState()
  if (!live || live.endedAt) return
  if (hold !== "held") return say({ what: [{ code: "held-in-another-window" }], refused: true })
  // What was said of the tap before is over with this one.
  chairStore.setState({ said: null })
  take(tapChair(live.chair, what, { at: readClocks(), revision: live.chair.revision }), live)
  keep()
}

/** From now on what is tapped outside the lanes is this person's. */
export function takeInHand(hand: 1 | 2) {
  const { live, hold } = chairStore.getState()
  if (!live || live.endedAt) return
  if (hold !== "held") return say({ what: [{ code: "held-in-another-window" }], refused: true })
  setLive({ ...live, chair: { ...live.chair, hand } })
}

/** A second tap on the same spot was not taken. */
export const saySecondTap = () => say({ what: [{ code: "second-tap" }], refused: false })

/** Lets the time go by; what the device's clock did meanwhile is said, and kept. */
export function tick() {
  const { live } = chairStore.getState()
  if (!live || live.endedAt) return
  const passed = passTime(live.chair, readClocks())
  take(passed, live)
  if (passed.said.length > 0) keep()
}

function take({ chair, said, refused }: Answer, live: LiveService) {
  chairStore.setState({ live: { ...live, chair } })
  if (said.length > 0) say({ what: said, refused })
}

function say(said: NonNullable<ChairState["said"]>) {
  chairStore.setState({ said })
  const text = chairSaid(said.what, words().chair, chairStore.getState().live?.chair.foils ?? [])
  if (said.refused) announceRefusal(text)
  else announce(text)
}

/** Begins to write in this tick; noted down until that is done. */
export function keep() {
  const { live, hold } = chairStore.getState()
  if (!live || hold !== "held") return
  rev = newId()
  knownRevs.add(rev)
  const service = { planId: live.planId, rev, running: live.endedAt === null, value: live }
  note(service)
  if (live.endedAt) forgetTime(live.planId)
  else noteTime(live, rev)
  void keepService(browserShelf, service, knownRevs).then((kept) => {
    const notKept = kept.state === "saved" ? null : kept.why
    if (notKept === null || notKept?.code === "changed-elsewhere") forget(service)
    if (notKept?.code === chairStore.getState().notKept?.code) return
    chairStore.setState({
      notKept,
      ...(notKept?.code === "changed-elsewhere" && { hold: "elsewhere" as const }),
    })
  })
}

/** Keeps how far the clock has come since the last tap. */
export function keepTime() {
  const { live, hold } = chairStore.getState()
  if (live && live.endedAt === null && hold === "held" && rev !== null) noteTime(live, rev)
}
