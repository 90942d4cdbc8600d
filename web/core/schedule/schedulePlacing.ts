import type { Range } from "../../../geometry/hair/tradeFigures"
import type { BowlShare } from "./scheduleBowls"
import { shareBowls } from "./scheduleBowls"
import type { Crew, Turn, Work } from "./scheduleHands"
import { afterTurn, crewFrom, nextTurn } from "./scheduleHands"
import { type HeatTimes, heatFactor, heatTimes, readyUnderHeat } from "./scheduleHeat"
import type { End, Service, TimedFoil } from "./scheduleInput"
import { coatsReady, laterOf, readyOf } from "./scheduleInput"

/** One foil on the head. First contact is when its placing begins; off is when it has been wiped or rinsed. */
export type PlacedFoil = OnHead & { offAtMin: number; readyMin: Range }
export type OnHead = {
  foil: TimedFoil
  /** Where the bowls that serve it stand: one for each mix along its strand. */
  bowls: readonly number[]
  person: number | null
  onAtMin: number
  placedAtMin: number
}
/** When mixing begins, and when the bowl is ready for use. */
type Mixing = { atMin: number; mixedAtMin: number }
export type MixedBowl = BowlShare & Mixing
export type Placing = {
  foils: readonly PlacedFoil[]
  bowls: readonly MixedBowl[]
  heat: HeatTimes | null
}

/** A foil to be wiped: from when, and by when at the latest so that it is off at its limit. */
type Due = { id: string; fromMin: number; latestMin: number }

/** The work as it goes on; lives within one call. */
type Floor = {
  service: Service
  end: End
  crew: Crew
  bowls: readonly BowlShare[]
  mixed: Mixing[]
  /** When each working section was parted. */
  partedAtMin: Map<string, number>
  /** Foils go on in their order: none is begun before the one ahead of it. */
  lastOnMin: number
  on: Map<string, OnHead>
  /** Soonest first. */
  dues: Due[]
  offAtMin: Map<string, number>
  heat: HeatTimes | null
}

/**
 * Hands take the work in order: mix a bowl when its first foil comes, part a working section, place a foil. A foil
 * that is ready comes off before the next is placed, and hands wait for one that could pass its limit meanwhile.
 */
export function schedulePlacing(service: Service, end: End): Placing {
  const floor = placeAll(service, end)
  putHeatOn(floor)
  while (floor.dues.length > 0) takeNextOff(floor)
  const together = service.rinse === "together" ? rinseTogetherMin(floor) : null
  const foils = service.foils.map(({ id }) => withOff(floor, id, together))
  return { foils, bowls: floor.bowls.map((bowl, at) => ({ ...bowl, ...floor.mixed[at] })), heat: floor.heat }
}

/** First contact of every foil, were none to come off before the last is on. */
export const firstContacts = (service: Service): Iterable<OnHead> =>
  placeAll({ ...service, rinse: "together" }, "mid").on.values()

function placeAll(service: Service, end: End): Floor {
  const floor = openFloor(service, end)
  const bowlsOf = bowlsByFoil(floor.bowls)
  if (service.soFar) for (const [foil, bowls] of bowlsOf) recallFoil(floor, foil, bowls)
  for (const foil of service.foils) placeFoil(floor, foil, bowlsOf.get(foil) ?? [0])
  return floor
}

/** Foils of one bowl share its list: the order solver asks for this thousands of times. */
function bowlsByFoil(bowls: readonly BowlShare[]): Map<TimedFoil, readonly number[]> {
  const found = new Map<TimedFoil, readonly number[]>()
  for (const [bowl, { foils }] of bowls.entries()) {
    const alone = [bowl]
    for (const foil of foils) {
      const before = foil.roots && found.get(foil)
      found.set(foil, before ? [...before, bowl] : alone)
    }
  }
  return found
}

function openFloor(service: Service, end: End): Floor {
  const crew = crewFrom(service.hands, service.soFar?.nowMin ?? service.preparingMin[end])
  const bowls = shareBowls(service)
  const offAtMin = new Map(Object.entries(service.soFar?.offAtMin ?? {}))
  return {
    service,
    end,
    crew,
    bowls,
    mixed: [],
    partedAtMin: new Map(),
    lastOnMin: 0,
    on: new Map(),
    dues: [],
    offAtMin,
    heat: null,
  }
}

/** What has already happened stands: a foil that is on keeps its first contact, its bowls are mixed, its section parted. */
function recallFoil(floor: Floor, foil: TimedFoil, bowls: readonly number[]) {
  const onAtMin = floor.service.soFar?.onAtMin[foil.id]
  if (onAtMin === undefined) return
  for (const bowl of bowls) {
    const mixedAtMin = floor.service.soFar?.mixedAtMin[bowl] ?? onAtMin
    floor.mixed[bowl] ??= { atMin: mixedAtMin, mixedAtMin }
  }
  floor.partedAtMin.set(foil.group, 0)
  putOn(floor, { foil, bowls, person: null, onAtMin, placedAtMin: onAtMin })
}

function placeFoil(floor: Floor, foil: TimedFoil, bowls: readonly number[]) {
  if (floor.on.has(foil.id)) return
  let mixedMin = 0
  for (const bowl of bowls) mixedMin = Math.max(mixedMin, mixBowl(floor, bowl, foil))
  const notBeforeMin = Math.max(mixedMin, partGroup(floor, foil.group), floor.lastOnMin)
  const turn = giveAfterDue(floor, { minutes: foil.placeMin[floor.end], notBeforeMin, atOwnPace: true })
  floor.lastOnMin = turn.fromMin
  putOn(floor, { foil, bowls, person: turn.person, onAtMin: turn.fromMin, placedAtMin: turn.toMin })
}

function mixBowl(floor: Floor, bowl: number, foil: TimedFoil): number {
  if (!floor.mixed[bowl]) {
    const mixedAtMin = floor.service.soFar?.mixedAtMin[bowl]
    floor.mixed[bowl] =
      mixedAtMin === undefined ? mixNow(floor, bowl, foil) : { atMin: mixedAtMin, mixedAtMin }
  }
  return floor.mixed[bowl].mixedAtMin
}

/** Nobody mixes a bowl and goes on a break: its first foil follows. */
function mixNow(floor: Floor, bowl: number, foil: TimedFoil): Mixing {
  const { fromMin, toMin } = giveAfterDue(floor, {
    minutes: floor.bowls[bowl].mix.mixingMin[floor.end],
    notBeforeMin: 0,
    thenMin: foil.placeMin[floor.end],
  })
  return { atMin: fromMin, mixedAtMin: toMin }
}

function partGroup(floor: Floor, group: string): number {
  const already = floor.partedAtMin.get(group)
  if (already !== undefined) return already
  const { toMin } = giveAfterDue(floor, { minutes: floor.service.partingMin[floor.end], notBeforeMin: 0 })
  floor.partedAtMin.set(group, toMin)
  return toMin
}

function putOn(floor: Floor, placed: OnHead) {
  const { foil, onAtMin, placedAtMin } = placed
  floor.on.set(foil.id, placed)
  if (floor.service.rinse === "together" || floor.offAtMin.has(foil.id)) return
  const wiping = floor.service.wipingMin[floor.end]
  const latestMin = onAtMin + foil.limitMin - wiping
  const readyAtMin = onAtMin + readyOn(floor, placed)[floor.end] - wiping
  insertDue(floor.dues, {
    id: foil.id,
    fromMin: Math.max(placedAtMin, Math.min(readyAtMin, latestMin)),
    latestMin,
  })
}

/** When all are on heat may come; what is still on is ready sooner for it, and what came off before is not touched. */
function putHeatOn(floor: Floor) {
  const placed = [...floor.on.values()]
  floor.heat = heatTimes(floor.service, Math.max(...placed.map(({ placedAtMin }) => placedAtMin)))
  if (!floor.heat) return
  const still = new Set(floor.dues.map(({ id }) => id))
  floor.dues = []
  for (const each of placed) if (still.has(each.foil.id)) putOn(floor, each)
}

const readyOn = (floor: Floor, placed: OnHead): Range =>
  floor.heat ? laterOf(coatsReadyOn(floor, placed)) : readyOf(placed.foil)

/** Minutes on until each coat of a foil is ready, in the order they go on, with the heat on the way. */
export function coatsReadyOn(
  { heat, service }: Pick<Floor, "heat" | "service">,
  { foil, onAtMin }: OnHead,
): Range[] {
  const ready = coatsReady(foil)
  if (!heat) return ready
  const faster = heatFactor(service.heat?.warmthC ?? null)
  return ready.map((range) => readyUnderHeat(range, onAtMin, heat, faster))
}

function insertDue(dues: Due[], due: Due) {
  const at = dues.findLastIndex(({ fromMin }) => fromMin <= due.fromMin)
  dues.splice(at + 1, 0, due)
}

function giveAfterDue(floor: Floor, work: Work): Turn {
  while (isAnyDueBefore(floor, work)) takeNextOff(floor)
  return give(floor, work)
}

/** Whether a foil is ready before the work begins, or would pass its limit while it goes on. */
function isAnyDueBefore({ dues, crew }: Floor, work: Work): boolean {
  if (dues.length === 0) return false
  const { fromMin, toMin } = nextTurn(crew, work)
  return dues.some((due) => due.fromMin <= fromMin || due.latestMin < toMin)
}

function takeNextOff(floor: Floor) {
  const [{ id, fromMin }] = floor.dues.splice(0, 1)
  const turn = give(floor, { minutes: floor.service.wipingMin[floor.end], notBeforeMin: fromMin })
  floor.offAtMin.set(id, turn.toMin)
}

function give(floor: Floor, work: Work): Turn {
  const turn = nextTurn(floor.crew, work)
  floor.crew = afterTurn(floor.crew, turn)
  return turn
}

/** When all are ready or the first reaches its limit, whichever is sooner, but not before the last is placed. */
function rinseTogetherMin(floor: Floor): number {
  const { on, end, offAtMin, service } = floor
  const still = [...on.values()].filter(({ foil }) => !offAtMin.has(foil.id))
  const readyAtMin = Math.max(...still.map((placed) => placed.onAtMin + readyOn(floor, placed)[end]))
  const limitAtMin = Math.min(...still.map(({ foil, onAtMin }) => onAtMin + foil.limitMin))
  const placedAtMin = Math.max(...still.map((placed) => placed.placedAtMin))
  return Math.max(placedAtMin, service.soFar?.nowMin ?? 0, Math.min(readyAtMin, limitAtMin))
}

function withOff(floor: Floor, id: string, together: number | null): PlacedFoil {
  const placed = floor.on.get(id)
  const offAtMin = floor.offAtMin.get(id) ?? together
  if (!placed || offAtMin === null) throw new Error(`Foil ${id} was never placed or never taken off`)
  const { foil, bowls, person, onAtMin, placedAtMin } = placed
  return { foil, bowls, person, onAtMin, placedAtMin, offAtMin, readyMin: readyOn(floor, placed) }
}
