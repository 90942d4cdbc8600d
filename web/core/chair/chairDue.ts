import { looks } from "../../../presets/timing/pace"
import type { ToneZoneName } from "../document/serviceRecord"
import type { SoFar } from "../schedule/scheduleInput"
import type { FoilTimes } from "../schedule/timing"
import type { Chair } from "./chair"
import type { FoilRecord } from "./chairRecord"
import { contactMs, heatOf, mixedTimes, recordsOf, standingOf } from "./chairRecord"
import { oncePerTap } from "./oncePerTap"
import { tonerTimes } from "./tonerTimes"

/** What a foil asks for next, or the heat over all, or a bowl, and in how many milliseconds; below 0 it is late. */
export type Due =
  /** Off at once for what a check said; at the goal; at the planned time; at its maximum time; or a check. */
  | { kind: "take-off" | "at-goal" | "planned-off" | "limit" | "look"; foil: string; inMs: number }
  /** Its roots are to go on. */
  | { kind: "roots"; foil: string; mix: string; inMs: number }
  | { kind: "heat-off"; foil: null; inMs: number }
  /** A toner at its planned minutes, and at the maximum time of its sheet. */
  | { kind: "toner-off" | "toner-limit"; foil: null; zone: ToneZoneName; inMs: number }
  /** A bowl that is still needed, counted from 0. */
  | { kind: "bowl"; foil: null; bowl: number; inMs: number }
type DueTime = AtTime<Due>
type AtTime<D> = D extends Due ? Omit<D, "inMs"> & { atMs: number } : never

/** Everything due within a time ahead, most urgent first. A foil at or past its limit stays due until it is off. */
export function dueWithin(chair: Chair, aheadMs: number): Due[] {
  const dues: Due[] = []
  for (const { atMs, ...due } of dueTimes(chair)) {
    const inMs = atMs - chair.elapsedMs
    if (inMs > aheadMs) break
    dues.push({ ...due, inMs })
  }
  return dues.sort((a, b) => urgency.indexOf(a.kind) - urgency.indexOf(b.kind) || a.inMs - b.inMs)
}

/** When each thing falls due, ms on the service's own clock, the soonest first. */
const dueTimes = oncePerTap((chair: Chair): DueTime[] => {
  const lookedAtMs = heatOf(chair)?.offAtMs ?? null
  const firstLook = new Map(chair.foils.map(({ id, firstLookMin }) => [id, firstLookMin * 60_000]))
  const foils = standingOf(chair).onNow.flatMap((record) => [
    ...rootsDue(record),
    ...duesOf(record, firstLook.get(record.id) ?? 0, lookedAtMs),
  ])
  return [...heatDue(chair), ...bowlsDue(chair), ...tonersDue(chair), ...foils].sort(
    (a, b) => a.atMs - b.atMs,
  )
})

const urgency: readonly Due["kind"][] = [
  "take-off",
  "limit",
  "toner-limit",
  "heat-off",
  "at-goal",
  "planned-off",
  "roots",
  "toner-off",
  "bowl",
  "look",
]

/** Heat is never on for longer than it was planned for. */
function heatDue(chair: Chair): DueTime[] {
  const heat = heatOf(chair)
  if (heat === null || heat.offAtMs !== null) return []
  return [{ kind: "heat-off", foil: null, atMs: heat.onAtMs + (chair.heatMin ?? 0) * 60_000 }]
}

/**
 * A mix is used within its pot life: until then, or until it is mixed afresh, its foils go on. A bowl in use whose tap
 * was missed counts from the earliest it can have been mixed: the first contact of the bowl before it.
 */
function bowlsDue(chair: Chair): DueTime[] {
  const records = recordsOf(chair)
  const isNeeded = (foils: readonly string[], mix: string) =>
    foils.some((id) => {
      const record = records.get(id)
      return record && record.offAtMs === null && contactMs(record, mix) === null
    })
  const { bowls = [] } = chair
  const tappedAtMs = mixedTimes(chair)
  const firstOnMs = bowls.map(({ foils, mix }) => firstContactMs(records, foils, mix))
  return bowls.flatMap(({ foils, mix, potLifeMin }, bowl) => {
    const mixedAtMs = tappedAtMs[bowl] ?? (firstOnMs[bowl] === null ? null : (firstOnMs[bowl - 1] ?? 0))
    if (mixedAtMs === null || !isNeeded(foils, mix)) return []
    return [{ kind: "bowl" as const, foil: null, bowl, atMs: mixedAtMs + potLifeMin * 60_000 }]
  })
}

function firstContactMs(
  records: ReadonlyMap<string, FoilRecord>,
  foils: readonly string[],
  mix: string,
): number | null {
  const onAtMs = foils.flatMap((id) => {
    const record = records.get(id)
    return (record && contactMs(record, mix)) ?? []
  })
  return onAtMs.length === 0 ? null : Math.min(...onAtMs)
}

/** Roots go on so long after the ends as was planned, counted from when those really went on. */
function rootsDue({ id, onAtMs, mustOff, rootsLater }: FoilRecord): DueTime[] {
  if (!rootsLater || rootsLater.onAtMs !== null || mustOff) return []
  const { mix, afterMs } = rootsLater
  return [{ kind: "roots", foil: id, mix, atMs: (onAtMs ?? 0) + afterMs }]
}

function duesOf(
  record: FoilRecord,
  firstLookMs: number,
  /** Heat ends with a look at all that is still on. */
  heatOffAtMs: number | null,
): DueTime[] {
  const onAtMs = record.onAtMs ?? 0
  const last = record.looks.at(-1)
  const foil = record.id
  const limit = { kind: "limit" as const, foil, atMs: onAtMs + record.limitMs }
  if (last && record.mustOff)
    return [{ kind: record.mustOff === "danger" ? "take-off" : "at-goal", foil, atMs: last.atMs }, limit]
  const plannedAtMs = record.plannedMs === null ? Number.POSITIVE_INFINITY : onAtMs + record.plannedMs
  const isSinceHeat = heatOffAtMs !== null && heatOffAtMs > onAtMs && heatOffAtMs > (last?.atMs ?? 0)
  const lookAtMs = last ? last.atMs + looks.everyMin * 60_000 : onAtMs + firstLookMs
  const nextLookMs = isSinceHeat ? Math.min(lookAtMs, heatOffAtMs) : lookAtMs
  // From its planned time on it is due off. Only a check after that time buys another interval.
  if (plannedAtMs < Number.POSITIVE_INFINITY && nextLookMs >= plannedAtMs)
    return [
      limit,
      { kind: "planned-off", foil, atMs: (last?.atMs ?? 0) >= plannedAtMs ? nextLookMs : plannedAtMs },
    ]
  const planned = { kind: "planned-off" as const, foil, atMs: plannedAtMs }
  return [limit, { kind: "look", foil, atMs: nextLookMs }, ...(Number.isFinite(plannedAtMs) ? [planned] : [])]
}

function tonersDue(chair: Chair): DueTime[] {
  return tonerTimes(chair)
    .filter(({ onAtMs, offAtMs }) => onAtMs !== null && offAtMs === null)
    .flatMap(({ zone, plannedMin, limitMin, onAtMs }) => {
      const at = (min: number) => (onAtMs ?? 0) + min * 60_000
      const off = { kind: "toner-off" as const, foil: null, zone, atMs: at(plannedMin) }
      return limitMin === null
        ? [off]
        : [off, { kind: "toner-limit" as const, foil: null, zone, atMs: at(limitMin) }]
    })
}

/** A chair, or what was kept of one. */
type Happened = Pick<Chair, "foils" | "log" | "elapsedMs">

/** What has happened, for planning the rest of the service again. */
export function soFarOf(chair: Happened): SoFar {
  const records = [...recordsOf(chair).values()]
  const heat = heatOf(chair)
  return {
    nowMin: toMin(chair.elapsedMs),
    onAtMin: minutesBy(records, ({ onAtMs }) => onAtMs),
    offAtMin: minutesBy(records, ({ offAtMs }) => offAtMs),
    ...rootsSoFar(records),
    mixedAtMin: mixedTimes(chair).map((ms) => (ms === undefined ? ms : toMin(ms))),
    ...(heat && {
      heat: { onAtMin: toMin(heat.onAtMs), offAtMin: heat.offAtMs === null ? null : toMin(heat.offAtMs) },
    }),
  }
}

function rootsSoFar(records: readonly FoilRecord[]): Pick<SoFar, "rootsOnAtMin"> {
  const later = records.filter(({ rootsLater }) => rootsLater)
  return later.length === 0
    ? {}
    : { rootsOnAtMin: minutesBy(later, ({ rootsLater }) => rootsLater?.onAtMs ?? null) }
}

type Planned = Pick<FoilTimes, "id" | "onAtMin" | "onMin">

/** Planned against real, by foil; null where it did not happen. */
export type PlannedAndReal = {
  id: string
  plannedOnMin: number
  realOnMin: number | null
  plannedMinutesOn: number
  realMinutesOn: number | null
}

export function plannedAndReal(planned: readonly Planned[], chair: Happened): PlannedAndReal[] {
  const { onAtMin, offAtMin } = soFarOf(chair)
  return planned.map(({ id, onAtMin: plannedOnMin, onMin }) => ({
    id,
    plannedOnMin,
    realOnMin: onAtMin[id] ?? null,
    plannedMinutesOn: onMin,
    realMinutesOn: id in offAtMin ? offAtMin[id] - onAtMin[id] : null,
  }))
}

const minutesBy = (records: readonly FoilRecord[], timeMs: (record: FoilRecord) => number | null) =>
  Object.fromEntries(
    records.flatMap((record) => {
      const ms = timeMs(record)
      return ms === null ? [] : [[record.id, toMin(ms)] as const]
    }),
  )

const toMin = (ms: number) => ms / 60_000
