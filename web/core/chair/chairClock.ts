import { numberText } from "../text/numberText"
import type { Chair, ChairBowl, ChairFoil, Tap } from "./chair"
import { foilRecords, heatOf } from "./chairRecord"
import type { Moment } from "./chairTime"
import { timeBetween } from "./chairTime"

/** The chair after a tap, and a sentence for the screen: why it was refused, or what to know. */
export type Answer = { chair: Chair; said: string | null; refused: boolean }

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
  return { chair: passed, said: note, refused: false }
}

/** Takes a tap of the window that has seen the chair at a revision; a refused one leaves the log as it is. */
export function tapChair(
  before: Chair,
  tap: Tap | { kind: "undo" },
  seen: { at: Moment; revision: number },
): Answer {
  const passed = passTime(before, seen.at)
  const { chair } = passed
  if (seen.revision !== chair.revision)
    return refuse(
      chair,
      "Another window has gone on with this service. Look at what it shows now, then tap again.",
    )
  const answer = tap.kind === "undo" ? undoLast(chair) : record(chair, tap)
  return { ...answer, said: [passed.said, answer.said].filter((part) => part !== null).join(" ") || null }
}

function record(chair: Chair, tap: Tap): Answer {
  const refused = "foil" in tap ? foilRefusal(chair, tap) : heatTapRefusal(chair, tap)
  if (refused) return refuse(chair, refused)
  const note = "foil" in tap ? missedNote(chair, tap) : null
  const onAtMs = "foil" in tap ? firstContact(chair, tap) : null
  const entry = { tap, atMs: chair.elapsedMs, wallMs: chair.last.wallMs, onAtMs, undone: false, note }
  return accept({ ...chair, log: [...chair.log, entry] }, note)
}

function firstContact(chair: Chair, { kind, foil }: FoilTap): number | null {
  const found = foilRecords(chair).get(foil)
  if (!found || found.isSettled) return null
  return kind === "on" ? chair.elapsedMs : found.earliestOnMs
}

function undoLast(chair: Chair): Answer {
  const at = chair.log.findLastIndex(({ undone }) => !undone)
  if (at < 0) return refuse(chair, "There is no tap to undo.")
  return accept({ ...chair, log: chair.log.with(at, { ...chair.log[at], undone: true }) }, null)
}

type FoilTap = Extract<Tap, { foil: string }>

function foilRefusal(chair: Chair, { kind, foil }: FoilTap): string | null {
  const found = foilRecords(chair).get(foil)
  if (!found) return `There is no foil ${foil} in this service.`
  const { name, onAtMs, offAtMs, isSettled } = found
  if (offAtMs !== null) return `${name} has been off since minute ${minute(offAtMs)}.`
  if (isSettled && (kind === "on" || kind === "missed-on"))
    return `${name} has been on since minute ${minute(onAtMs ?? 0)}; its time runs from there.`
  if (kind === "off" && onAtMs === null)
    return `${name} was never tapped on, so it cannot come off. If that tap was missed, tap “missed on” first.`
  return null
}

function heatTapRefusal(chair: Chair, { kind }: Tap): string | null {
  const heat = heatOf(chair)
  const isOn = heat !== null && heat.offAtMs === null
  if (kind === "heat-off" && !isOn) return "The heat was never tapped on, so it cannot be taken away."
  if (kind !== "heat-on") return null
  if (chair.heatMin === undefined) return "No heat is planned: the clock leaves it out."
  if (heat === null) return null
  return `The heat has been ${isOn ? "on" : "off"} since minute ${minute(heat.offAtMs ?? heat.onAtMs)}, and comes once.`
}

/** What to know of a foil whose first tap was missed, or comes out of turn. */
function missedNote(chair: Chair, { kind, foil }: FoilTap): string | null {
  const found = foilRecords(chair).get(foil)
  if (!found || found.isSettled) return null
  const earliest = `minute ${minute(found.earliestOnMs)}`
  if (kind !== "on")
    return `${found.name} was not tapped on; its time counts from ${earliest}, the earliest it can have been.`
  if (found.onAtMs === null) return null
  return `${found.name} counts from now. If it went on before, undo and tap “missed on”: then it counts from ${earliest}.`
}

const minute = (ms: number) => numberText(ms / 60_000, 1)
const accept = (chair: Chair, said: string | null): Answer => ({
  chair: { ...chair, revision: chair.revision + 1 },
  said,
  refused: false,
})
const refuse = (chair: Chair, said: string): Answer => ({ chair, said, refused: true })
