import type { DoneService, Plan } from "../document/schema"
import type {
  AskedAloud,
  RecordedBowl,
  RecordedFoil,
  RecordedToner,
  ServiceRecord,
} from "../document/serviceRecord"
import { serviceSchema } from "../document/serviceSchema"
import { liftRecord1 } from "../file/liftService1"
import type { TimedPlan } from "../schedule/timedPlan"
import type { Chair, ChairBowl, LogEntry } from "./chair"
import { startChair } from "./chairClock"
import { contactMs, type Mixing, mixedTimes, mixings, recordsOf } from "./chairRecord"
import type { Moment } from "./chairTime"
import { plannedService } from "./plannedService"
import { tonerTimes } from "./tonerTimes"

type Timed = Extract<TimedPlan, { ok: true }>

/** A service of a plan while it goes on, and what had been planned for it. Plain data, kept after every tap. */
export type LiveService = {
  planId: string
  /** The client's, so that nobody takes one service for another. */
  initials?: string | undefined
  startedAt: string
  planned: readonly RecordedFoil[]
  /** Who the colourist and the assistant are. */
  people?: readonly string[] | undefined
  /** Who asked aloud what nobody had asked before. */
  asked?: AskedAloud | undefined
  chair: Chair
  endedAt: string | null
}

export function beginService(
  plan: Plan,
  timed: Timed,
  now: Moment,
  askedBy: string | null = null,
): LiveService {
  const { foils, bowls, toners, heatMin } = plannedService(plan, timed)
  return {
    planId: plan.id,
    initials: plan.client.initials,
    startedAt: isoOf(now.wallMs),
    planned: foils,
    people: plan.timing?.people,
    ...(askedBy !== null && { asked: { by: askedBy, wallAt: isoOf(now.wallMs) } }),
    chair: { ...startChair(foils, now, heatMin, bowls), toners },
    endedAt: null,
  }
}

/** The service with the initials and the foils as the plan has them now, in its order; what was touched stays, drawn or not. */
export function withFoilsOf(live: LiveService, plan: Plan, timed: Timed): LiveService {
  const { chair } = live
  const records = recordsOf(chair)
  const next = plannedService(plan, timed)
  const before = new Map(live.planned.map((foil) => [foil.id, foil]))
  const touched = (id: string) => records.get(id)?.onAtMs !== null
  const now = next.foils.map((foil) => (touched(foil.id) ? (before.get(foil.id) ?? foil) : foil))
  const kept = new Set(now.map(({ id }) => id))
  const gone = live.planned.filter(({ id }) => !kept.has(id) && touched(id))
  const planned = sameOr(live.planned, [...gone, ...now])
  const mixed = mixedTimes(chair)
  const bowls = next.bowls.map((bowl, at) => (mixed[at] === undefined ? bowl : (chair.bowls?.[at] ?? bowl)))
  const toned = tonerTimes(chair).some(({ onAtMs }) => onAtMs !== null)
  const after: Chair = {
    ...chair,
    foils: planned,
    heatMin: next.heatMin,
    bowls: sameOr(chair.bowls, bowls),
    toners: toned ? chair.toners : sameOr(chair.toners, next.toners),
  }
  const initials = plan.client.initials || live.initials
  const isSame = (["foils", "heatMin", "bowls", "toners"] as const).every(
    (part) => after[part] === chair[part],
  )
  return isSame && initials === live.initials ? live : { ...live, initials, planned, chair: after }
}

/** What says the same stays the same object. */
const sameOr = <T>(before: readonly T[] | undefined, now: readonly T[]): readonly T[] =>
  JSON.stringify(before) === JSON.stringify(now) ? (before ?? now) : now

/** As it is written into the plan: wall time in words of ISO 8601. */
export const recordOfService = (live: LiveService): ServiceRecord => ({
  startedAt: live.startedAt,
  ...(live.endedAt !== null && { endedAt: live.endedAt }),
  ...(live.people && { people: live.people }),
  ...(live.asked && { asked: live.asked }),
  foils: live.planned,
  bowls: bowlsDone(live.chair),
  toners: tonersDone(live.chair),
  ...happened(live.chair),
})

/** The service with the drawing that was carried out: what the plan becomes later changes nothing in it. */
export const doneService = (live: LiveService, plan: Plan): DoneService => ({
  ...recordOfService(live),
  drawn: drawnOf(plan),
})

const drawnOf = ({ head, hair, mixes, sections, toning, workingSections }: Plan): DoneService["drawn"] => ({
  head,
  hair,
  mixes,
  sections,
  ...(toning && { toning }),
  ...(workingSections && { workingSections }),
})

/** A plan as its last service was carried out; null where none was, or none kept its drawing. */
export function planAsDone(plan: Plan): Plan | null {
  const drawn = plan.service?.drawn
  if (!drawn) return null
  const { toning: _, workingSections: __, ...rest } = plan
  return { ...rest, ...drawn }
}

/**
 * Every bowl with what it was made of; one of an earlier Partline that did not say is left out. What was mixed afresh was
 * made twice: the bowl before it is kept too, after all others, with the foils that were on by then.
 */
function bowlsDone(chair: Chair): RecordedBowl[] {
  const records = recordsOf(chair)
  const times = mixings(chair.log)
  const made = (chair.bowls ?? []).map((bowl, at) => madeOf(bowl, times[at] ?? [], records))
  return [...made.flatMap((each) => each.slice(-1)), ...made.flatMap((each) => each.slice(0, -1))]
}

/** A bowl as often as it was mixed, with the foils that each was for; once, without a time, where no tap tells of it. */
function madeOf(
  bowl: ChairBowl,
  times: readonly Mixing[],
  records: ReturnType<typeof recordsOf>,
): RecordedBowl[] {
  const { product, developerVolume, ratio, lightenerG, developerG, foils, ...rest } = bowl
  if (
    product === undefined ||
    developerVolume === undefined ||
    !ratio ||
    lightenerG === undefined ||
    developerG === undefined
  )
    return []
  const recipe = { ...rest, product, developerVolume, ratio, lightenerG, developerG, leftG: null }
  if (times.length === 0) return [{ ...recipe, foils, mixedAtMs: null }]
  const last = times.length - 1
  const bowlOf = (id: string) => {
    const record = records.get(id)
    const onAtMs = record ? contactMs(record, bowl.mix) : null
    return onAtMs === null
      ? last
      : Math.max(
          0,
          times.findLastIndex(({ atMs }) => atMs <= onAtMs),
        )
  }
  return times.map(({ atMs }, nth) => ({
    ...recipe,
    foils: foils.filter((id) => bowlOf(id) === nth),
    mixedAtMs: whole(atMs),
  }))
}

const tonersDone = (chair: Chair): RecordedToner[] =>
  tonerTimes(chair).map((toner) => ({
    ...toner,
    onAtMs: whole(toner.onAtMs),
    offAtMs: whole(toner.offAtMs),
    leftG: null,
  }))

const whole = (ms: number | null) => (ms === null ? null : Math.round(ms))

const happened = (chair: Chair): Pick<ServiceRecord, "log" | "clockNotes"> => ({
  log: chair.log.map(({ wallMs, ...entry }) => ({
    ...entry,
    atMs: Math.round(entry.atMs),
    onAtMs: entry.onAtMs === null ? null : Math.round(entry.onAtMs),
    wallAt: isoOf(wallMs),
  })),
  clockNotes: chair.clockNotes.map(({ wallMs, ...note }) => ({
    ...note,
    atMs: Math.round(note.atMs),
    wallAt: isoOf(wallMs),
  })),
})

/** A kept service as the clock reads it. */
export const chairOfRecord = ({ foils, log }: ServiceRecord) => ({
  foils,
  log: log.map(({ wallAt, ...entry }): LogEntry => ({ ...entry, wallMs: Date.parse(wallAt) })),
  elapsedMs: log.at(-1)?.atMs ?? 0,
})

/** What a database gave back, where it is a service: a window of another version may have written it. */
export function liveServiceOf(value: unknown): LiveService | null {
  if (!isLiveService(value)) return null
  const live = { ...value, chair: liftRecord1(value.chair) as Chair }
  return isSound(live) ? live : null
}

/** Passes the door that its record passes in a file, and its clock can go on. */
function isSound(live: LiveService): boolean {
  try {
    const { elapsedMs, last, revision } = live.chair
    const isGoing = [elapsedMs, last.wallMs, last.monotonicMs, revision].every(Number.isFinite)
    return isGoing && serviceSchema.safeParse(recordOfService(live)).success
  } catch {
    return false
  }
}

const isLiveService = (value: unknown): value is LiveService =>
  typeof value === "object" &&
  value !== null &&
  ["planId", "startedAt", "planned", "chair", "endedAt"].every((field) => field in value)

const isoOf = (wallMs: number) => new Date(wallMs).toISOString()
