import { rootsAfterMin } from "../../../geometry/section/section"
import type { LookSeen } from "../document/serviceRecord"
import type { Chair, ChairFoil, LogEntry } from "./chair"
import { oncePerTap } from "./oncePerTap"

/** What the log says of one foil; times on the service's own clock. */
export type FoilRecord = {
  id: string
  mapNumber: number
  limitMs: number
  /** When it was planned off, from its first contact; null where no plan says. */
  plannedMs: number | null
  lane: 1 | 2
  /** First contact: as tapped, or the earliest it can have been where the tap is missing; null while not on. */
  onAtMs: number | null
  /** A tap said that it is on, or that it was: first contact no longer moves. */
  isSettled: boolean
  isTapped: boolean
  earliestOnMs: number
  /** Its roots where they go on later: on only since a tap of their own. */
  rootsLater?: RootsLater
  offAtMs: number | null
  looks: readonly FoilLook[]
  /** What a check said that ends its time on; null while none did. */
  mustOff: "danger" | "goal" | null
  /** A check was due and was put off. */
  notChecked: number
  recoated: number
}

/** `by`: whose tap it was, where two worked and it says so. */
export type RootsLater = { mix: string; afterMs: number; onAtMs: number | null; by?: 1 | 2 | undefined }

/** The level seen of a foil last; null where nobody looked. */
export const levelLastSeen = (record: Pick<FoilRecord, "looks"> | undefined): number | null =>
  record?.looks.findLast(({ seen }) => seen.level !== null)?.seen.level ?? null

/** `by`: whose check it was, where two worked and the tap says so. */
export type FoilLook = { atMs: number; seen: LookSeen; by?: 1 | 2 }

/**
 * The record of every foil, in order of application. A foil without its tap counts as on from the first contact of
 * the foil before it: from the moment a later foil is on, until its own tap comes, or for good once it is handled.
 */
export function foilRecords({ foils, log }: Pick<Chair, "foils" | "log">): Map<string, FoilRecord> {
  const live = log.filter(({ undone }) => !undone)
  const entries = entriesByFoil(live)
  const rinsedAtMs = live.findLast(({ tap }) => tap.kind === "rinsed")?.atMs ?? null
  const skippedAtMs = skipTimes(
    foils.map(({ id, lane = 1 }) => ({ lane, onAtMs: inTurnAtMs(entries.get(id) ?? []) })),
  )
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
  /** Foils whose tap "on" has not come, in order, by lane. */
  queues: Readonly<Record<1 | 2, readonly FoilRecord[]>>
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
    queues: { 1: queueOf(all, 1), 2: queueOf(all, 2) },
    onNow: all.filter(({ onAtMs, offAtMs }) => onAtMs !== null && offAtMs === null),
    isAllOff: all.every(({ offAtMs }) => offAtMs !== null),
  }
})

const queueOf = (all: readonly FoilRecord[], lane: 1 | 2) =>
  all.filter((foil) => foil.lane === lane && !foil.isSettled && foil.offAtMs === null)

/** Foils that are on, and their roots not yet. */
export const rootsToCome = (chair: Pick<Chair, "foils" | "log">): readonly FoilRecord[] =>
  standingOf(chair).onNow.filter(({ rootsLater }) => rootsLater?.onAtMs === null)

/** When a mix touched the hair of a foil; null while it has not. */
export const contactMs = ({ onAtMs, rootsLater }: FoilRecord, mix: string): number | null =>
  rootsLater?.mix === mix ? rootsLater.onAtMs : onAtMs

export const recordsOf = (chair: Pick<Chair, "foils" | "log">) => standingOf(chair).records

/** The record of a foil that is on; undefined while it is not. */
export const onNow = (chair: Pick<Chair, "foils" | "log">, foil: string | null) =>
  standingOf(chair).onNow.find(({ id }) => id === foil)

type Tapped = Pick<LogEntry, "tap" | "atMs" | "undone">

export type Mixing = { atMs: number; by?: 1 | 2 | undefined }

/** Every time each bowl was mixed, in order, and by whom where that is known; none for one whose tap was missed. */
export function mixings(log: readonly Tapped[]): Mixing[][] {
  const mixed: Mixing[][] = []
  for (const { tap, atMs, undone } of log) {
    if (tap.kind !== "mixed" || undone) continue
    const bowl = tap.bowl ?? mixed.length
    mixed[bowl] = [...(mixed[bowl] ?? []), { atMs, by: tap.by }]
  }
  return Array.from(mixed, (times) => times ?? [])
}

/** When each bowl was mixed last, ms on the service's own clock; undefined for one whose tap was missed. */
export const mixedTimes = ({ log }: Pick<Chair, "log">): (number | undefined)[] =>
  mixings(log).map((times) => times.at(-1)?.atMs)

/**
 * When each foil was first passed over: the earliest tap "on" of those after it in its lane; infinite while there is
 * none. Who chooses a foil out of its turn knows that those before it are not on.
 */
function skipTimes(foils: readonly { lane: 1 | 2; onAtMs: number | null }[]): number[] {
  const times: number[] = []
  const soonest = { 1: Number.POSITIVE_INFINITY, 2: Number.POSITIVE_INFINITY }
  for (let at = foils.length - 1; at >= 0; at--) {
    const { lane, onAtMs } = foils[at]
    times[at] = soonest[lane]
    soonest[lane] = Math.min(soonest[lane], onAtMs ?? Number.POSITIVE_INFINITY)
  }
  return times
}

const inTurnAtMs = (entries: readonly LogEntry[]) =>
  entries.find(({ tap }) => tap.kind === "on" && !tap.outOfTurn)?.atMs ?? null

/** The first contact of the nearest foil before that was on when this one was passed over: later taps move nothing. */
const earliestOn = (before: readonly FoilRecord[], skippedAtMs: number) =>
  before.findLast(({ onAtMs }) => onAtMs !== null && onAtMs <= skippedAtMs)?.onAtMs ?? 0

type Place = { isSkipped: boolean; earliestOnMs: number; rinsedAtMs: number | null }

function recordOf(foil: ChairFoil, entries: readonly LogEntry[], place: Place): FoilRecord {
  const { isSkipped, earliestOnMs, rinsedAtMs } = place
  const looks = looksOf(entries)
  const settledMs = entries.find((entry) => entry.onAtMs !== null)?.onAtMs ?? null
  const onAtMs = settledMs ?? (isSkipped ? earliestOnMs : null)
  const isRinsed = rinsedAtMs !== null && onAtMs !== null && onAtMs <= rinsedAtMs
  const rootsLater = rootsOn(foil, entries, onAtMs)
  return {
    id: foil.id,
    mapNumber: foil.mapNumber,
    ...timesOf(foil, rootsLater, onAtMs),
    ...(rootsLater && { rootsLater }),
    lane: foil.lane ?? 1,
    onAtMs,
    isSettled: settledMs !== null,
    isTapped: atOf(entries, "on") !== null,
    earliestOnMs,
    offAtMs: atOf(entries, "off") ?? (isRinsed ? rinsedAtMs : null),
    looks,
    mustOff: mustOff(looks, foil.goalLevel),
    notChecked: entries.filter(({ tap }) => tap.kind === "not-checked").length,
    recoated: entries.filter(({ tap }) => tap.kind === "re-coated").length,
  }
}

function rootsOn(
  { roots, rootsLater }: ChairFoil,
  entries: readonly LogEntry[],
  onAtMs: number | null,
): RootsLater | undefined {
  if (!roots || !rootsLater) return undefined
  const told = entries.find(({ tap }) => tap.kind === "roots-on" || tap.kind === "missed-roots-on")
  const coat = { mix: roots.mix, afterMs: rootsAfterMin(roots) * 60_000 }
  if (!told || told.tap.kind === "alarm") return { ...coat, onAtMs: null }
  // Said afterwards: they count from the earliest they can have been.
  const rootsAtMs = told.tap.kind === "roots-on" ? told.atMs : onAtMs
  return { ...coat, onAtMs: rootsAtMs, ...(told.tap.by && { by: told.tap.by }) }
}

/** Each coat has its own clock: no end is planned, and no limit runs, of what is not on. */
function timesOf(
  { limitMin, plannedMinutesOn, rootsLater: planned }: ChairFoil,
  roots: RootsLater | undefined,
  onAtMs: number | null,
): Pick<FoilRecord, "limitMs" | "plannedMs"> {
  const limitMs = limitMin * 60_000
  const plannedMs = plannedMinutesOn === undefined ? null : plannedMinutesOn * 60_000
  if (!roots || !planned) return { limitMs, plannedMs }
  if (roots.onAtMs === null || onAtMs === null) return { limitMs, plannedMs: null }
  const afterMs = roots.onAtMs - onAtMs
  const leastMs = Math.min(limitMs, afterMs + planned.limitMin * 60_000)
  const shiftMs = afterMs - planned.plannedAfterMin * 60_000
  return { limitMs: leastMs, plannedMs: plannedMs === null ? null : Math.min(leastMs, plannedMs + shiftMs) }
}

/** Checks one by one, and those of a group that was carried on: then nothing was said of the strand. */
const looksOf = (entries: readonly LogEntry[]): FoilLook[] =>
  entries.flatMap(({ tap, atMs }) => {
    if (tap.kind !== "looked" && tap.kind !== "carried-on") return []
    return [{ atMs, seen: tap.kind === "looked" ? tap.seen : nothingSeen, ...(tap.by && { by: tap.by }) }]
  })

const nothingSeen: LookSeen = { level: null, stretch: null, comfort: null, moist: null }

/** What was seen once is not taken back by a later check: only undo does that. */
function mustOff(looks: readonly FoilLook[], goalLevel: number | undefined): FoilRecord["mustOff"] {
  if (looks.some(({ seen }) => seen.stretch === "stop" || seen.comfort === "burning")) return "danger"
  const isThere = looks.some(({ seen }) => goalLevel !== undefined && (seen.level ?? 0) >= goalLevel)
  return isThere ? "goal" : null
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
  for (const entry of log)
    for (const foil of foilsOf(entry)) {
      const own = entries.get(foil)
      if (own) own.push(entry)
      else entries.set(foil, [entry])
    }
  return entries
}

function foilsOf({ tap }: LogEntry): readonly string[] {
  if ("foil" in tap) return [tap.foil]
  return tap.kind === "carried-on" || tap.kind === "not-checked" ? tap.foils : []
}

const atOf = (entries: readonly LogEntry[], kind: LogEntry["tap"]["kind"]) =>
  entries.find(({ tap }) => tap.kind === kind)?.atMs ?? null

/** Numbers of the foils that are on and have not had their planned time, nor been said to be at the goal. */
export const notReadyOf = (chair: Pick<Chair, "foils" | "log" | "elapsedMs">): number[] =>
  standingOf(chair)
    .onNow.filter(
      ({ onAtMs, plannedMs, mustOff, rootsLater }) =>
        mustOff === null &&
        (rootsLater?.onAtMs === null ||
          (plannedMs !== null && chair.elapsedMs - (onAtMs ?? 0) < plannedMs - aMinuteMs)),
    )
    .map(({ mapNumber }) => mapNumber)

const aMinuteMs = 60_000
