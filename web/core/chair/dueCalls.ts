import type { RecordedFoil, ToneZoneName } from "../document/serviceRecord"
import type { Piece } from "../kinds/kindRecord"
import { pieceOf } from "../kinds/kindRecords"
import type { Chair } from "./chair"
import { type Due, dueWithin } from "./chairDue"
import { oncePerTap } from "./oncePerTap"

/** One thing to be called out at the chair, for one foil or for several together. */
export type DueCall = {
  kind: Due["kind"]
  stage: "ahead" | "now" | "late"
  /** Numbers of the map, in order of application. */
  foils: readonly number[]
  ids: readonly string[]
  /** What they are called together, where not all of them are foils. */
  piece?: Piece
  /** The bowl that runs out, counted from 0, and its mix. */
  bowl?: { at: number; mix: string }
  zone?: ToneZoneName
  /** What goes on the roots of a foil. */
  mix?: string
  /** Until the most urgent of them; below 0 it is late. */
  inMs: number
}

/** How long ahead a thing is called out. */
export type Ahead = { lookMs: number; limitMs: number }

/** What a sheet sets the end of is called out sooner than what can wait. */
const isLimit: Record<Due["kind"], boolean> = {
  "take-off": false,
  "at-goal": false,
  "planned-off": false,
  limit: true,
  roots: false,
  "toner-off": false,
  "toner-limit": false,
  "heat-off": false,
  bowl: true,
  look: false,
}

/** All that is due now or soon, most urgent first: looks of a round together, limits each by itself. */
export function dueCalls(chair: Chair, ahead: Ahead): DueCall[] {
  const { numberOf, orderOf, kindOf } = namesOf(chair)
  const dues = dueWithin(chair, Math.max(ahead.lookMs, ahead.limitMs)).filter(
    ({ kind, inMs }) => inMs <= (isLimit[kind] ? ahead.limitMs : ahead.lookMs),
  )
  const isRound = ({ kind }: Due) => kind === "look"
  const looks = dues.filter(isRound)
  const orderIn = ({ foil }: Due) => orderOf.get(foil ?? "") ?? 0
  const round = looks.toSorted((a, b) => orderIn(a) - orderIn(b))
  const groups = [
    ...dues.filter((due) => !isRound(due)).map((due) => [due]),
    ...(looks.length > 0 ? [round] : []),
  ]
  return groups.map((group) => {
    const inMs = Math.min(...group.map((due) => due.inMs))
    const [first] = group
    return {
      kind: first.kind,
      ...(first.kind === "bowl" && { bowl: { at: first.bowl, mix: chair.bowls?.[first.bowl]?.mix ?? "" } }),
      ...(first.kind === "roots" && { mix: first.mix }),
      ...("zone" in first && { zone: first.zone }),
      stage: stageOf(inMs),
      foils: group.flatMap(({ foil }) => (foil === null ? [] : (numberOf.get(foil) ?? 0))),
      ids: group.flatMap(({ foil }) => foil ?? []),
      ...calledOf(group.flatMap(({ foil }) => kindOf.get(foil ?? "") ?? [])),
      inMs,
    }
  })
}

const namesOf = oncePerTap(({ foils }: Chair) => ({
  numberOf: new Map(foils.map(({ id, mapNumber }) => [id, mapNumber])),
  orderOf: new Map(foils.map(({ id }, at) => [id, at])),
  kindOf: new Map(foils.map(({ id, kind }) => [id, { kind }])),
}))

const calledOf = (foils: readonly Pick<RecordedFoil, "kind">[]): Pick<DueCall, "piece"> => {
  const piece = pieceOf(foils)
  return piece === "foil" ? {} : { piece }
}

const lateMs = 60_000

const stageOf = (inMs: number): DueCall["stage"] => (inMs > 0 ? "ahead" : inMs > -lateMs ? "now" : "late")

/** The most urgent call of a chair, or the one that comes next; null while nothing is on. */
export function nextCall(chair: Chair): DueCall | null {
  const calls = dueCalls(chair, {
    lookMs: Number.POSITIVE_INFINITY,
    limitMs: Number.POSITIVE_INFINITY,
  })
  const soonest = calls.reduce<DueCall | null>((a, b) => (a && a.inMs <= b.inMs ? a : b), null)
  return calls.find(({ stage }) => stage !== "ahead") ?? soonest
}

/**
 * The calls as they are shown: all foils past their maximum time in one, and all at their planned time in one, so that
 * they push nothing out of sight; nobody is asked to check what has to come off, nor told twice to take it off.
 */
export function callsShown(calls: readonly DueCall[]): DueCall[] {
  const past = joinedWhere(calls, (call) => call.kind === "limit" && call.stage !== "ahead")
  const once = past.flatMap((call, at) => {
    const gone = past
      .slice(0, at)
      .filter(isOff)
      .flatMap(({ ids }) => ids)
    return withoutFoils(call, gone)
  })
  return joinedWhere(once, (call) => call.kind === "planned-off" && call.stage !== "ahead")
}

/** Calls to take off now. */
export const isOff = ({ kind, stage }: Pick<DueCall, "kind" | "stage">) =>
  stage !== "ahead" && ["take-off", "at-goal", "planned-off", "limit"].includes(kind)

/** What can hurt: only this is shown in red. */
export const isDanger = ({ kind, stage }: Pick<DueCall, "kind" | "stage">) =>
  kind === "take-off" || (stage !== "ahead" && ["limit", "heat-off", "toner-limit"].includes(kind))

function joinedWhere(calls: readonly DueCall[], isOne: (call: DueCall) => boolean): DueCall[] {
  const those = calls.filter(isOne)
  if (those.length < 2) return [...calls]
  return calls.flatMap((call) => (call === those[0] ? joined(those) : isOne(call) ? [] : call))
}

const joined = (calls: readonly DueCall[]): DueCall => ({
  ...calls[0],
  ...(calls.some(({ piece }) => piece !== calls[0].piece) && { piece: "both" as const }),
  foils: calls.flatMap(({ foils }) => foils),
  ids: calls.flatMap(({ ids }) => ids),
})

/** What is left of a call of several foils; none where all of them are gone. */
function withoutFoils(call: DueCall, gone: readonly string[]): DueCall[] {
  if (call.ids.length === 0 || call.kind === "take-off" || call.kind === "limit") return [call]
  const kept = call.ids.map((id) => !gone.includes(id))
  const [foils, ids] = [call.foils.filter((_, i) => kept[i]), call.ids.filter((_, i) => kept[i])]
  return ids.length > 0 ? [{ ...call, foils, ids }] : []
}
