import { type Foil, type FoilKind, isFoil } from "../../../geometry/section/section"
import { type FoilRecord, foilRecords, type RootsLater } from "../chair/chairRecord"
import { chairOfRecord } from "../chair/liveService"
import type { Plan } from "../document/schema"
import type { LookSeen, RecordedFoil } from "../document/serviceRecord"
import { foilsIn } from "../figures/foilCount"
import { headOf } from "../figures/measured"
import { type CoatCode, coatCodes } from "../placement/coatCodes"
import { type PlaceCode, placeOf } from "../placement/places"
import { timedPlan } from "../schedule/timedPlan"
import { personOfTap, placedBy, type RecordPerson } from "./recordPeople"

/** What was seen of a foil at the chair, `onMin` minutes after it went on. */
export type LookCode =
  | ({ code: "checked"; onMin: number; by: RecordPerson | null } & LookSeen)
  /** A check that was put off. */
  | { code: "not-checked"; times: number }
  | { code: "re-coated"; times: number }
  /** The roots, where they were to go on later: so many minutes after the ends, or never. */
  | { code: "roots-on"; afterMin: number; by: RecordPerson | null }
  | { code: "roots-never" }

/** A foil as it was planned and as it went, minutes of the service; null where that is not known. */
export type RecordFoil = {
  number: number
  kind: FoilKind
  /** Foils that lie in it side by side. */
  foils: number
  place: PlaceCode
  /** What it was coated with, in the order that goes on. */
  coats: readonly CoatCode[]
  planned: { onMin: number; offMin: number } | null
  real: { onMin: number; offMin: number | null } | null
  /** Who placed it, where that is known. */
  by: RecordPerson | null
  /** In order. */
  looks: readonly LookCode[]
}

/** Every foil of a plan in order of application, beside what it was coated with and what was tapped at its last service. */
export function recordFoils(plan: Plan): RecordFoil[] {
  const head = headOf(plan)
  const planned = plannedTimes(plan)
  const records = plan.service ? foilRecords(chairOfRecord(plan.service)) : new Map<string, FoilRecord>()
  const people = { placed: placedBy(plan), checked: plan.service ? personOfTap(plan.service) : () => null }
  const asCoated = new Map(plan.service?.foils.map((foil) => [foil.id, foil]))
  return plan.sections.filter(isFoil).map((foil) => ({
    number: foil.mapNumber,
    kind: foil.kind,
    foils: foilsIn(foil, plan),
    place: placeOf(foil, head),
    coats: coatsOn(foil, asCoated.get(foil.id)),
    planned: planned.get(foil.id) ?? null,
    ...realOf(records.get(foil.id), people),
  }))
}

const coatsOn = (foil: Foil, recorded: RecordedFoil | undefined) =>
  coatCodes(recorded?.mix === undefined ? foil : { mix: recorded.mix, roots: recorded.roots })

/** As planned when the service began, else as the clock plans it now. */
function plannedTimes(plan: Plan): Map<string, { onMin: number; offMin: number }> {
  if (plan.service)
    return new Map(
      plan.service.foils.map(({ id, plannedOnMin, plannedMinutesOn }) => [
        id,
        { onMin: plannedOnMin, offMin: plannedOnMin + plannedMinutesOn },
      ]),
    )
  const timed = timedPlan(plan)
  if (!timed.ok) return new Map()
  return new Map(
    timed.schedule.foils.map(({ id, onAtMin, offAtMin }) => [id, { onMin: onAtMin, offMin: offAtMin }]),
  )
}

function realOf(
  record: FoilRecord | undefined,
  people: {
    placed: (foil: string) => RecordPerson | null
    checked: (by: 1 | 2 | undefined) => RecordPerson | null
  },
): Pick<RecordFoil, "real" | "by" | "looks"> {
  if (!record || record.onAtMs === null) return { real: null, by: null, looks: [] }
  const { id, onAtMs, offAtMs, looks, notChecked, recoated, rootsLater } = record
  return {
    by: people.placed(id),
    real: { onMin: toMin(onAtMs), offMin: offAtMs === null ? null : toMin(offAtMs) },
    looks: [
      ...rootsLine(rootsLater, onAtMs, people.checked),
      ...looks.map(
        ({ atMs, seen, by }): LookCode => ({
          code: "checked",
          onMin: toMin(atMs - onAtMs),
          by: people.checked(by),
          ...seen,
        }),
      ),
      ...(notChecked > 0 ? [{ code: "not-checked" as const, times: notChecked }] : []),
      ...(recoated > 0 ? [{ code: "re-coated" as const, times: recoated }] : []),
    ],
  }
}

function rootsLine(
  roots: RootsLater | undefined,
  onAtMs: number,
  who: (by: 1 | 2 | undefined) => RecordPerson | null,
): LookCode[] {
  if (!roots) return []
  return roots.onAtMs === null
    ? [{ code: "roots-never" }]
    : [{ code: "roots-on", afterMin: toMin(roots.onAtMs - onAtMs), by: who(roots.by) }]
}

const toMin = (ms: number) => ms / 60_000
