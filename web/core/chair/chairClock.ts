import type { ClockNote, TapNote, ToneZoneName } from "../document/serviceRecord"
import type { Chair, ChairBowl, ChairFoil, Tap } from "./chair"
import { type FoilRecord, foilRecords, heatOf } from "./chairRecord"
import type { Moment } from "./chairTime"
import { timeBetween } from "./chairTime"
import { handAfter, tapInHand } from "./inHand"
import { tonerTimes } from "./tonerTimes"

/** The chair after a tap, and what is said of it: why it was refused, or what to know. */
export type Answer = { chair: Chair; said: readonly ChairSaid[]; refused: boolean }
export type ChairSaid = ClockNote | TapNote | ChairRefusal

/** Why a tap is not taken. A foil is its number on the map; minutes are of the service. */
export type ChairRefusal =
  | { code: "changed-in-another-window" }
  | { code: "nothing-to-undo" }
  | { code: "no-such-foil" }
  | { code: "off-since"; foil: number; atMin: number }
  | { code: "on-since"; foil: number; atMin: number }
  | { code: "never-on"; foil: number }
  | { code: "no-later-roots"; foil: number }
  | { code: "roots-on-since"; foil: number; atMin: number }
  | { code: "heat-never-on" }
  | { code: "no-heat-planned" }
  | { code: "heat-once"; state: "on" | "off"; atMin: number }
  | { code: "toner-over"; zone: ToneZoneName }
  | { code: "toner-on-since"; zone: ToneZoneName; atMin: number }
  | { code: "toner-never-on"; zone: ToneZoneName }

export const startChair = (
  foils: readonly ChairFoil[],
  now: Moment,
  heatMin?: number,
  bowls: readonly ChairBowl[] = [],
): Chair => ({
  foils,
  heatMin,
  bowls,
  elapsedMs: 0,
  last: now,
  log: [],
  clockNotes: [],
  revision: 0,
})

/** Lets time go by. Called every second, and before every tap, so that little hangs on one reading. */
export function passTime(chair: Chair, now: Moment): Answer {
  const { ms, note } = timeBetween(chair.last, now)
  const elapsedMs = chair.elapsedMs + ms
  const odd = note === null ? [] : [{ atMs: elapsedMs, wallMs: now.wallMs, note }]
  const passed = { ...chair, elapsedMs, last: now, clockNotes: [...chair.clockNotes, ...odd] }
  return { chair: passed, said: note === null ? [] : [note], refused: false }
}

/** Takes a tap of the window that has seen the chair at a revision; a refused one leaves the log as it is. */
export function tapChair(
  before: Chair,
  tap: Tap | { kind: "undo" },
  seen: { at: Moment; revision: number },
): Answer {
  const passed = passTime(before, seen.at)
  const { chair } = passed
  if (seen.revision !== chair.revision) return refuse(chair, { code: "changed-in-another-window" })
  const answer = tap.kind === "undo" ? undoLast(chair) : record(chair, tap)
  return { ...answer, said: [...passed.said, ...answer.said] }
}

function record(chair: Chair, given: Tap): Answer {
  const tap = tapInHand(chair, given)
  const refused =
    "foil" in tap ? foilRefusal(chair, tap) : (heatTapRefusal(chair, tap) ?? tonerRefusal(chair, tap))
  if (refused) return refuse(chair, refused)
  const note = "foil" in tap ? missedNote(chair, tap) : null
  const onAtMs = "foil" in tap ? firstContact(chair, tap) : null
  const entry = { tap, atMs: chair.elapsedMs, wallMs: chair.last.wallMs, onAtMs, undone: false, note }
  const hand = handAfter(chair, tap)
  return accept({ ...chair, ...(hand && { hand }), log: [...chair.log, entry] }, note)
}

function firstContact(chair: Chair, { kind, foil }: FoilTap): number | null {
  const found = foilRecords(chair).get(foil)
  if (!found || found.isSettled) return null
  return kind === "on" ? chair.elapsedMs : found.earliestOnMs
}

function undoLast(chair: Chair): Answer {
  const at = chair.log.findLastIndex(({ undone }) => !undone)
  if (at < 0) return refuse(chair, { code: "nothing-to-undo" })
  return accept({ ...chair, log: chair.log.with(at, { ...chair.log[at], undone: true }) }, null)
}

type FoilTap = Extract<Tap, { foil: string }>

function foilRefusal(chair: Chair, { kind, foil }: FoilTap): ChairRefusal | null {
  const found = foilRecords(chair).get(foil)
  if (!found) return { code: "no-such-foil" }
  const { mapNumber, onAtMs, offAtMs, isSettled } = found
  if (offAtMs !== null) return { code: "off-since", foil: mapNumber, atMin: toMin(offAtMs) }
  if (isSettled && (kind === "on" || kind === "missed-on"))
    return { code: "on-since", foil: mapNumber, atMin: toMin(onAtMs ?? 0) }
  if (kind === "off" && onAtMs === null) return { code: "never-on", foil: mapNumber }
  return kind === "roots-on" || kind === "missed-roots-on" ? rootsRefusal(found) : null
}

function rootsRefusal({ mapNumber: foil, onAtMs, rootsLater }: FoilRecord): ChairRefusal | null {
  if (!rootsLater) return { code: "no-later-roots", foil }
  if (onAtMs === null) return { code: "never-on", foil }
  if (rootsLater.onAtMs === null) return null
  return { code: "roots-on-since", foil, atMin: toMin(rootsLater.onAtMs) }
}

function heatTapRefusal(chair: Chair, { kind }: Tap): ChairRefusal | null {
  const heat = heatOf(chair)
  const isOn = heat !== null && heat.offAtMs === null
  if (kind === "heat-off" && !isOn) return { code: "heat-never-on" }
  if (kind !== "heat-on") return null
  if (chair.heatMin === undefined) return { code: "no-heat-planned" }
  if (heat === null) return null
  return { code: "heat-once", state: isOn ? "on" : "off", atMin: toMin(heat.offAtMs ?? heat.onAtMs) }
}

function tonerRefusal(chair: Chair, tap: Tap): ChairRefusal | null {
  if (!("zone" in tap)) return null
  const { zone, kind } = tap
  const toner = tonerTimes(chair).find((each) => each.zone === zone)
  if (!toner || toner.offAtMs !== null) return { code: "toner-over", zone }
  if (kind === "toner-on")
    return toner.onAtMs === null ? null : { code: "toner-on-since", zone, atMin: toMin(toner.onAtMs) }
  return toner.onAtMs === null ? { code: "toner-never-on", zone } : null
}

/** What to know of a foil whose first tap was missed, or comes out of turn. */
function missedNote(chair: Chair, { kind, foil }: FoilTap): TapNote | null {
  const found = foilRecords(chair).get(foil)
  if (!found || found.isSettled) return null
  const data = { foil: found.mapNumber, fromMin: toMin(found.earliestOnMs) }
  if (kind !== "on") return { code: "counts-from-earliest", ...data }
  return found.onAtMs === null ? null : { code: "counts-from-now", ...data }
}

const toMin = (ms: number) => ms / 60_000
const accept = (chair: Chair, said: ChairSaid | null): Answer => ({
  chair: { ...chair, revision: chair.revision + 1 },
  said: said === null ? [] : [said],
  refused: false,
})
const refuse = (chair: Chair, said: ChairRefusal): Answer => ({ chair, said: [said], refused: true })
