import type { Chair } from "./chairClock"
import { type Due, dueWithin } from "./chairDue"

/** One thing to be called out at the chair, for one foil or for several together. */
export type DueCall = {
  kind: Due["kind"]
  stage: "ahead" | "now" | "late"
  /** Numbers of the map, in order of application. */
  foils: readonly number[]
  ids: readonly string[]
  /** The bowl that runs out, counted from 0, and its mix. */
  bowl?: { at: number; mix: string }
  /** Until the most urgent of them; below 0 it is late. */
  inMs: number
}

/** How long ahead a thing is called out. */
export type Ahead = { lookMs: number; limitMs: number }

/** What a sheet sets the end of is called out sooner than what can wait. */
const isLimit: Record<Due["kind"], boolean> = {
  "take-off": false,
  limit: true,
  "heat-off": false,
  bowl: true,
  look: false,
}

/** All that is due now or soon, most urgent first: looks of a round together, limits each by itself. */
export function dueCalls(chair: Chair, everyMin: number, ahead: Ahead): DueCall[] {
  const numberOf = new Map(chair.foils.map(({ id, mapNumber }) => [id, mapNumber]))
  const orderOf = new Map(chair.foils.map(({ id }, at) => [id, at]))
  const dues = dueWithin(chair, everyMin, Math.max(ahead.lookMs, ahead.limitMs)).filter(
    ({ kind, inMs }) => inMs <= (isLimit[kind] ? ahead.limitMs : ahead.lookMs),
  )
  const looks = dues.filter(({ kind }) => kind === "look")
  const orderIn = ({ foil }: Due) => orderOf.get(foil ?? "") ?? 0
  const round = looks.toSorted((a, b) => orderIn(a) - orderIn(b))
  const groups = [
    ...dues.filter(({ kind }) => kind !== "look").map((due) => [due]),
    ...(looks.length > 0 ? [round] : []),
  ]
  return groups.map((group) => {
    const inMs = Math.min(...group.map((due) => due.inMs))
    const [first] = group
    return {
      kind: first.kind,
      ...(first.kind === "bowl" && { bowl: { at: first.bowl, mix: chair.bowls?.[first.bowl]?.mix ?? "" } }),
      stage: stageOf(inMs),
      foils: group.flatMap(({ foil }) => (foil === null ? [] : (numberOf.get(foil) ?? 0))),
      ids: group.flatMap(({ foil }) => foil ?? []),
      inMs,
    }
  })
}

const lateMs = 60_000

const stageOf = (inMs: number): DueCall["stage"] => (inMs > 0 ? "ahead" : inMs > -lateMs ? "now" : "late")

/** The most urgent call of a chair, or the one that comes next; null while nothing is on. */
export function nextCall(chair: Chair, everyMin: number): DueCall | null {
  const calls = dueCalls(chair, everyMin, {
    lookMs: Number.POSITIVE_INFINITY,
    limitMs: Number.POSITIVE_INFINITY,
  })
  const soonest = calls.reduce<DueCall | null>((a, b) => (a && a.inMs <= b.inMs ? a : b), null)
  return calls.find(({ stage }) => stage !== "ahead") ?? soonest
}

/** A call in the fewest words: "Foil 3: off now, 1:20 past its longest time." */
export function callWords({ kind, stage, foils, inMs, bowl }: DueCall): string {
  const who = `${foils.length === 1 ? "Foil" : "Foils"} ${foils.join(", ")}`
  const clock = clockText(Math.abs(inMs))
  if (bowl)
    return stage === "ahead"
      ? `${bowlName(bowl)}: use up within ${clock}`
      : `${bowlName(bowl)}: ${clock} past its pot life, mix it afresh`
  if (kind === "heat-off") return stage === "ahead" ? `Heat: off in ${clock}` : `Heat: off now, ${clock} over`
  if (kind === "take-off") return `${who}: take off now, the last look said stop`
  if (kind === "limit")
    return stage === "ahead"
      ? `${who}: longest time in ${clock}`
      : `${who}: off now, ${clock} past its longest time`
  return stage === "ahead"
    ? `${who}: look in ${clock}`
    : stage === "now"
      ? `${who}: look now`
      : `${who}: look now, ${clock} late`
}

const bowlName = ({ at, mix }: NonNullable<DueCall["bowl"]>) => `Bowl ${at + 1} of mix ${mix}`

/** What is said once, when a call comes up or becomes more urgent: without the seconds that would go on changing. */
export function spokenCall({ kind, stage, foils, bowl }: DueCall): string {
  const who = `${foils.length === 1 ? "Foil" : "Foils"} ${foils.join(", ")}`
  if (bowl)
    return `${bowlName(bowl)}: ${stage === "ahead" ? "use it up soon" : "past its pot life, mix it afresh"}.`
  if (kind === "heat-off") return stage === "ahead" ? "Heat off soon." : "Heat off now, then look."
  if (kind === "take-off") return `${who}: take off now.`
  if (kind === "limit")
    return stage === "ahead" ? `${who}: longest time soon.` : `${who}: off now, past its longest time.`
  return stage === "ahead" ? `${who}: look soon.` : `${who}: look now.`
}

/** Minutes and seconds: "12:05". */
export function clockText(ms: number): string {
  const seconds = Math.floor(ms / 1000)
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")}`
}
