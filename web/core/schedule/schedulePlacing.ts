import type { Range } from "../../../geometry/hair/tradeFigures"
import type { BowlShare } from "./scheduleBowls"
import { shareBowls } from "./scheduleBowls"
import type { Crew, Turn, Work } from "./scheduleHands"
import { afterTurn, crewFrom, nextTurn } from "./scheduleHands"
import { closedAtMin, type HeatTimes, heatTimes, limitAtMin, type OnHead, readyOn } from "./scheduleHeat"
import type { End, Service, TimedFoil } from "./scheduleInput"
import { goesOnLater } from "./scheduleInput"

/** One foil on the head. First contact is when its placing begins; off is when it has been wiped or rinsed. */
export type PlacedFoil = OnHead & { offAtMin: number; readyMin: Range; limitAtMin: number }
/** When mixing begins, and when the bowl is ready for use. */
type Mixing = { atMin: number; mixedAtMin: number }
export type MixedBowl = BowlShare & Mixing
export type Placing = {
  foils: readonly PlacedFoil[]
  bowls: readonly MixedBowl[]
  heat: HeatTimes | null
}

/** A foil to be wiped: from when, and by when at the latest so that it is off at its limit; or its roots to be coated. */
type Due = { id: string; fromMin: number; latestMin: number; isRoots?: true }

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
  /** How many of them are roots to be coated. */
  rootsDue: number
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
  while (floor.dues.length > 0) takeNext(floor)
  const together = service.rinse === "together" ? rinseTogetherMin(floor) : null
  const foils = service.foils.map(({ id }) => withOff(floor, id, together))
  const bowls = floor.bowls.map((bowl, at) => ({ ...bowl, ...(floor.mixed[at] ?? neverMixed(service)) }))
  return { foils, bowls, heat: floor.heat }
}

/** A bowl for roots that no longer go on. */
const neverMixed = ({ soFar }: Service): Mixing => ({
  atMin: soFar?.nowMin ?? 0,
  mixedAtMin: soFar?.nowMin ?? 0,
})

/** First contact of every foil, were none to come off before the last is on. */
export const firstContacts = (service: Service): Iterable<OnHead> =>
  placeAll({ ...service, rinse: "together" }, "mid").on.values()

function placeAll(service: Service, end: End): Floor {
  const floor = openFloor(service, end)
  const bowlsOf = bowlsByFoil(floor.bowls)
  if (service.soFar) for (const [foil, bowls] of bowlsOf) recallFoil(floor, foil, bowls)
  for (const foil of service.foils) placeFoil(floor, foil, bowlsOf.get(foil) ?? [0])
  while (floor.rootsDue > 0) takeNext(floor)
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
    rootsDue: 0,
    offAtMin,
    heat: null,
  }
}

/** What has already happened stands: a foil that is on keeps its first contact, its bowls are mixed, its section parted. */
function recallFoil(floor: Floor, foil: TimedFoil, bowls: readonly number[]) {
  const onAtMin = floor.service.soFar?.onAtMin[foil.id]
  if (onAtMin === undefined) return
  const rootsAtMin = foil.roots?.later && floor.service.soFar?.rootsOnAtMin?.[foil.id]
  for (const bowl of bowls) {
    const usedAtMin = isForLater(floor, foil, bowl) ? rootsAtMin : onAtMin
    const mixedAtMin = floor.service.soFar?.mixedAtMin[bowl] ?? usedAtMin
    if (mixedAtMin !== undefined) floor.mixed[bowl] ??= { atMin: mixedAtMin, mixedAtMin }
  }
  floor.partedAtMin.set(foil.group, 0)
  const placed = { foil, bowls, person: null, onAtMin, placedAtMin: onAtMin }
  if (rootsAtMin === undefined) putOn(floor, placed)
  else settle(floor, { ...placed, rootsOn: { onAtMin: rootsAtMin, placedAtMin: rootsAtMin } })
}

/** Whether a bowl is for the roots of a foil that go on later. */
const isForLater = ({ bowls }: Floor, foil: TimedFoil, bowl: number) =>
  foil.roots?.later !== undefined && goesOnLater(foil, bowls[bowl].mix.id)

function placeFoil(floor: Floor, foil: TimedFoil, bowls: readonly number[]) {
  if (floor.on.has(foil.id)) return
  let mixedMin = 0
  for (const bowl of bowls)
    if (!isForLater(floor, foil, bowl)) {
      const readyMin = floor.mixed[bowl]?.mixedAtMin ?? mixBowl(floor, bowl, () => mixNow(floor, bowl, foil))
      mixedMin = Math.max(mixedMin, readyMin)
    }
  const notBeforeMin = Math.max(mixedMin, partGroup(floor, foil.group), floor.lastOnMin)
  const turn = giveAfterDue(floor, { minutes: foil.placeMin[floor.end], notBeforeMin, atOwnPace: true })
  floor.lastOnMin = turn.fromMin
  putOn(floor, { foil, bowls, person: turn.person, onAtMin: turn.fromMin, placedAtMin: turn.toMin })
}

function mixBowl(floor: Floor, bowl: number, mix: () => Mixing): number {
  if (!floor.mixed[bowl]) {
    const mixedAtMin = floor.service.soFar?.mixedAtMin[bowl]
    floor.mixed[bowl] = mixedAtMin === undefined ? mix() : { atMin: mixedAtMin, mixedAtMin }
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

/** On the head; its roots are due later, or else all that is to be on it is. */
function putOn(floor: Floor, placed: OnHead) {
  const { foil, onAtMin, placedAtMin } = placed
  if (!foil.roots?.later || floor.offAtMin.has(foil.id)) return settle(floor, placed)
  floor.on.set(foil.id, placed)
  floor.rootsDue += 1
  const fromMin = Math.max(placedAtMin, onAtMin + foil.roots.later.afterMin)
  insertDue(floor.dues, { id: foil.id, fromMin, latestMin: Number.POSITIVE_INFINITY, isRoots: true })
}

/** Nothing more goes on it: it is due off. */
function settle(floor: Floor, placed: OnHead) {
  const { foil, onAtMin, placedAtMin, rootsOn } = placed
  floor.on.set(foil.id, placed)
  if (floor.service.rinse === "together" || floor.offAtMin.has(foil.id)) return
  const wiping = floor.service.wipingMin[floor.end]
  const latestMin = limitAtMin(placed) - wiping
  const readyAtMin = onAtMin + readyOn(floor, placed)[floor.end] - wiping
  insertDue(floor.dues, {
    id: foil.id,
    fromMin: Math.max(rootsOn?.placedAtMin ?? placedAtMin, Math.min(readyAtMin, latestMin)),
    latestMin,
  })
}

/**
 * The roots of a foil are coated at the next free moment, their bowl mixed for it; what would pass its limit meanwhile
 * comes off first. Ends that are at their own limit by then come off without.
 */
function putRootsOn(floor: Floor, { id, fromMin }: Due) {
  floor.rootsDue -= 1
  const placed = floor.on.get(id)
  const later = placed?.foil.roots?.later
  if (!placed || !later) throw new Error(`Foil ${id} has no roots that go on later`)
  const work = { minutes: later.placeMin[floor.end], notBeforeMin: fromMin, atOwnPace: true }
  for (let due = rushing(floor, work); due; due = rushing(floor, work)) takeOff(floor, due)
  const isTooLate = ({ fromMin: at }: Turn) => at >= placed.onAtMin + placed.foil.limitMin
  if (isTooLate(nextTurn(floor.crew, work))) return settle(floor, placed)
  for (const bowl of placed.bowls)
    if (isForLater(floor, placed.foil, bowl))
      mixBowl(floor, bowl, () => mixForRoots(floor, bowl, fromMin, work.minutes))
  const turn = give(floor, work)
  settle(floor, { ...placed, rootsOn: { onAtMin: turn.fromMin, placedAtMin: turn.toMin } })
}

/** The foil that would pass its limit while a piece of work is done. */
function rushing({ dues, crew }: Floor, work: Work): Due | undefined {
  const { toMin } = nextTurn(crew, work)
  return dues.find(({ latestMin, isRoots }) => !isRoots && latestMin < toMin)
}

/** Mixed when the roots come due, not before. */
function mixForRoots(floor: Floor, bowl: number, notBeforeMin: number, thenMin: number): Mixing {
  const minutes = floor.bowls[bowl].mix.mixingMin[floor.end]
  const { fromMin, toMin } = give(floor, { minutes, notBeforeMin, thenMin })
  return { atMin: fromMin, mixedAtMin: toMin }
}

/** When all are on heat may come; what is still on is ready sooner for it, and what came off before is not touched. */
function putHeatOn(floor: Floor) {
  const placed = [...floor.on.values()]
  floor.heat = heatTimes(floor.service, Math.max(...placed.map(closedAtMin)))
  if (!floor.heat) return
  const still = new Set(floor.dues.map(({ id }) => id))
  floor.dues = []
  for (const each of placed) if (still.has(each.foil.id)) settle(floor, each)
}

function insertDue(dues: Due[], due: Due) {
  const at = dues.findLastIndex(({ fromMin }) => fromMin <= due.fromMin)
  dues.splice(at + 1, 0, due)
}

function giveAfterDue(floor: Floor, work: Work): Turn {
  while (isAnyDueBefore(floor, work)) takeNext(floor)
  return give(floor, work)
}

/** Whether a foil is ready before the work begins, or would pass its limit while it goes on. */
function isAnyDueBefore({ dues, crew }: Floor, work: Work): boolean {
  if (dues.length === 0) return false
  const { fromMin, toMin } = nextTurn(crew, work)
  return dues.some((due) => due.fromMin <= fromMin || due.latestMin < toMin)
}

function takeNext(floor: Floor) {
  const [due] = floor.dues
  if (!due.isRoots) return takeOff(floor, due)
  floor.dues.splice(0, 1)
  putRootsOn(floor, due)
}

function takeOff(floor: Floor, due: Due) {
  floor.dues.splice(floor.dues.indexOf(due), 1)
  const { id, fromMin } = due
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
  const firstLimitMin = Math.min(...still.map(limitAtMin))
  const placedAtMin = Math.max(...still.map(closedAtMin))
  return Math.max(placedAtMin, service.soFar?.nowMin ?? 0, Math.min(readyAtMin, firstLimitMin))
}

function withOff(floor: Floor, id: string, together: number | null): PlacedFoil {
  const placed = floor.on.get(id)
  const offAtMin = floor.offAtMin.get(id) ?? together
  if (!placed || offAtMin === null) throw new Error(`Foil ${id} was never placed or never taken off`)
  const { foil, bowls, person, onAtMin, placedAtMin, rootsOn } = placed
  const [readyMin, endMin] = [readyOn(floor, placed), limitAtMin(placed)]
  // Field by field: to copy all of it would take longer than to plan it.
  return { foil, bowls, person, onAtMin, placedAtMin, rootsOn, offAtMin, readyMin, limitAtMin: endMin }
}
