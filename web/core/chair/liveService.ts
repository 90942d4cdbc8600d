import type { Plan } from "../document/schema"
import type { RecordedFoil, ServiceRecord } from "../document/serviceRecord"
import { firstLookMin } from "../schedule/scheduleLooks"
import type { TimedPlan } from "../schedule/timedPlan"
import type { Chair, ChairBowl, LogEntry } from "./chair"
import { startChair } from "./chairClock"
import { recordsOf } from "./chairRecord"
import type { Moment } from "./chairTime"

type Timed = Extract<TimedPlan, { ok: true }>

/** A service of a plan while it goes on, and what had been planned for it. Plain data, kept after every tap. */
export type LiveService = {
  planId: string
  startedAt: string
  planned: readonly RecordedFoil[]
  /** Who the pairs of hands are. */
  people?: readonly string[] | undefined
  chair: Chair
  endedAt: string | null
}

export function beginService(plan: Plan, timed: Timed, now: Moment): LiveService {
  const planned = plannedFoils(timed)
  return {
    planId: plan.id,
    startedAt: isoOf(now.wallMs),
    planned,
    people: plan.timing?.people,
    chair: startChair(planned, now, heatMinOf(timed), bowlsOf(timed)),
    endedAt: null,
  }
}

const heatMinOf = ({ service, schedule }: Timed) => (schedule.heat ? service.heat?.minutes : undefined)

const bowlsOf = ({ schedule }: Timed): ChairBowl[] =>
  schedule.bowls.map(({ mix, foils, mixedAtMin, useByMin }) => ({
    mix,
    foils,
    potLifeMin: useByMin - mixedAtMin,
  }))

function plannedFoils({ service, schedule }: Timed): RecordedFoil[] {
  const timesOf = new Map(schedule.foils.map((times) => [times.id, times]))
  return service.foils.map((foil) => {
    const times = timesOf.get(foil.id)
    return {
      id: foil.id,
      mapNumber: foil.mapNumber,
      kind: foil.kind,
      limitMin: foil.limitMin,
      firstLookMin: firstLookMin(foil, service.looks),
      plannedOnMin: times?.onAtMin ?? 0,
      plannedMinutesOn: times?.onMin ?? 0,
    }
  })
}

/** The service with the foils as the plan has them now, in its order; one that was touched stays, drawn or not. */
export function withFoilsOf(live: LiveService, timed: Timed): LiveService {
  const records = recordsOf(live.chair)
  const before = new Map(live.planned.map((foil) => [foil.id, foil]))
  const now = plannedFoils(timed).map((foil) => before.get(foil.id) ?? foil)
  const kept = new Set(now.map(({ id }) => id))
  const gone = live.planned.filter(({ id }) => !kept.has(id) && records.get(id)?.onAtMs !== null)
  const planned = [...gone, ...now]
  const heatMin = heatMinOf(timed)
  const bowls = bowlsOf(timed)
  const isSame =
    heatMin === live.chair.heatMin &&
    JSON.stringify(bowls) === JSON.stringify(live.chair.bowls) &&
    planned.length === live.planned.length &&
    planned.every((foil, at) => foil === live.planned[at])
  return isSame ? live : { ...live, planned, chair: { ...live.chair, foils: planned, heatMin, bowls } }
}

/** As it is written into the plan: wall time in words of ISO 8601. */
export const recordOfService = ({ startedAt, people, planned, chair }: LiveService): ServiceRecord => ({
  startedAt,
  ...(people && { people }),
  foils: planned,
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

/** Whether what a database gave back is a service: a window of another version may have written it. */
export const isLiveService = (value: unknown): value is LiveService =>
  typeof value === "object" &&
  value !== null &&
  ["planId", "startedAt", "planned", "chair", "endedAt"].every((field) => field in value)

const isoOf = (wallMs: number) => new Date(wallMs).toISOString()
