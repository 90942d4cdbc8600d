import type { Chair, ChairFoil, LogEntry, Look } from "./chair"
import { oncePerTap } from "./oncePerTap"

/** What the log says of one foil; times on the service's own clock. */
export type FoilRecord = {
  id: string
  mapNumber: number
  name: string
  limitMs: number
  /** First contact: as tapped, or the earliest it can have been where the tap is missing; null while not on. */
  onAtMs: number | null
  /** A tap said that it is on, or that it was: first contact no longer moves. */
  isSettled: boolean
  isTapped: boolean
  earliestOnMs: number
  offAtMs: number | null
  looks: readonly FoilLook[]
  recoated: number
}
export type FoilLook = { atMs: number; seen: Look }

/**
 * The record of every foil, in order of application. A foil without its tap counts as on from the first contact of
 * the foil before it: from the moment a later foil is on, until its own tap comes, or for good once it is handled.
 */
export function foilRecords({ foils, log }: Pick<Chair, "foils" | "log">): Map<string, FoilRecord> {
  const live = log.filter(({ undone }) => !undone)
  const entries = entriesByFoil(live)
  const rinsedAtMs = live.findLast(({ tap }) => tap.kind === "rinsed")?.atMs ?? null
  const skippedAtMs = skipTimes(foils.map(({ id }) => atOf(entries.get(id) ?? [], "on")))
  const records: FoilRecord[] = []
  for (const [at, foil] of foils.entries()) {
    const earliestOnMs = earliestOn(records, skippedAtMs[at])
    const place = { isSkipped: skippedAtMs[at] < Number.POSITIVE_INFINITY, earliestOnMs, rinsedAtMs }
    records.push(recordOf(foil, entries.get(foil.id) ?? [], place))
  }
  return new Map(records.map((record) => [record.id, record]))
}

/** How the foils of a chair stand: it changes with a tap, not with time. */
export type Standing = {
  /** Of every foil, in order of application. */
  records: ReadonlyMap<string, FoilRecord>
  /** The foil to place next; null when every foil is on. */
  nextId: string | null
  onNow: readonly FoilRecord[]
  isAllOff: boolean
}

/** How the foils stand, worked out once for each tap. */
export const standingOf = oncePerTap((chair: Pick<Chair, "foils" | "log">): Standing => {
  const records = foilRecords(chair)
  const all = [...records.values()]
  return {
    records,
    nextId: all.find(({ onAtMs }) => onAtMs === null)?.id ?? null,
    onNow: all.filter(({ onAtMs, offAtMs }) => onAtMs !== null && offAtMs === null),
    isAllOff: all.every(({ offAtMs }) => offAtMs !== null),
  }
})

export const recordsOf = (chair: Pick<Chair, "foils" | "log">) => standingOf(chair).records

/** The record of a foil that is on; undefined while it is not. */
export const onNow = (chair: Pick<Chair, "foils" | "log">, foil: string | null) =>
  standingOf(chair).onNow.find(({ id }) => id === foil)

/** When each bowl was mixed last, ms on the service's own clock; undefined for one whose tap was missed. */
export function mixedTimes({ log }: Pick<Chair, "log">): (number | undefined)[] {
  const times: (number | undefined)[] = []
  for (const { tap, atMs, undone } of log)
    if (tap.kind === "mixed" && !undone) times[tap.bowl ?? times.length] = atMs
  return Array.from(times)
}

/** When each foil was first passed over: the earliest tap "on" of those after it; infinite while there is none. */
function skipTimes(onAtMs: readonly (number | null)[]): number[] {
  const times: number[] = []
  let soonest = Number.POSITIVE_INFINITY
  for (let at = onAtMs.length - 1; at >= 0; at--) {
    times[at] = soonest
    soonest = Math.min(soonest, onAtMs[at] ?? Number.POSITIVE_INFINITY)
  }
  return times
}

/** The first contact of the nearest foil before that was on when this one was passed over: later taps move nothing. */
const earliestOn = (before: readonly FoilRecord[], skippedAtMs: number) =>
  before.findLast(({ onAtMs }) => onAtMs !== null && onAtMs <= skippedAtMs)?.onAtMs ?? 0

type Place = { isSkipped: boolean; earliestOnMs: number; rinsedAtMs: number | null }

function recordOf(foil: ChairFoil, entries: readonly LogEntry[], place: Place): FoilRecord {
  const { isSkipped, earliestOnMs, rinsedAtMs } = place
  const settledMs = entries.find((entry) => entry.onAtMs !== null)?.onAtMs ?? null
  const onAtMs = settledMs ?? (isSkipped ? earliestOnMs : null)
  const isRinsed = rinsedAtMs !== null && onAtMs !== null && onAtMs <= rinsedAtMs
  return {
    id: foil.id,
    mapNumber: foil.mapNumber,
    name: `Foil ${foil.mapNumber}`,
    limitMs: foil.limitMin * 60_000,
    onAtMs,
    isSettled: settledMs !== null,
    isTapped: atOf(entries, "on") !== null,
    earliestOnMs,
    offAtMs: atOf(entries, "off") ?? (isRinsed ? rinsedAtMs : null),
    looks: entries.flatMap(({ tap, atMs }) => (tap.kind === "looked" ? [{ atMs, seen: tap.seen }] : [])),
    recoated: entries.filter(({ tap }) => tap.kind === "re-coated").length,
  }
}

/** When heat was put on and taken away; null while it has not been. */
export function heatOf({ log }: Pick<Chair, "log">): { onAtMs: number; offAtMs: number | null } | null {
  const live = log.filter(({ undone }) => !undone)
  const onAtMs = live.find(({ tap }) => tap.kind === "heat-on")?.atMs
  if (onAtMs === undefined) return null
  return { onAtMs, offAtMs: live.find(({ tap }) => tap.kind === "heat-off")?.atMs ?? null }
}

function entriesByFoil(log: readonly LogEntry[]): Map<string, LogEntry[]> {
  const entries = new Map<string, LogEntry[]>()
  for (const entry of log) {
    if (!("foil" in entry.tap)) continue
    const own = entries.get(entry.tap.foil)
    if (own) own.push(entry)
    else entries.set(entry.tap.foil, [entry])
  }
  return entries
}

const atOf = (entries: readonly LogEntry[], kind: LogEntry["tap"]["kind"]) =>
  entries.find(({ tap }) => tap.kind === kind)?.atMs ?? null
