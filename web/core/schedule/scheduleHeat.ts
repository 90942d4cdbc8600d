import type { Range } from "../../../geometry/hair/tradeFigures"
import { liftPriors, liftReference } from "../../../presets/timing/lift"
import { heatHabits } from "../../../presets/timing/pace"
import { temperatureFactor } from "../lift/lift"
import { heatRefusal } from "./heatRefusal"
import { coatsReady, laterBy, laterOf, readyOf, type Service, type TimedFoil } from "./scheduleInput"

/** Heat over the foils: on, off with a look, and cool before going on. */
export type HeatTimes = { onAtMin: number; offAtMin: number; lookAtMin: number; coolUntilMin: number }

/** Heat comes when every foil is on, or as it was really put on and taken away; null where it may not be used. */
export function heatTimes(service: Service, lastPlacedMin: number): HeatTimes | null {
  const { heat, soFar } = service
  if (!heat || heatRefusal(service)) return null
  const onAtMin = soFar?.heat?.onAtMin ?? Math.max(lastPlacedMin, soFar?.nowMin ?? 0)
  const offAtMin = soFar?.heat?.offAtMin ?? onAtMin + heat.minutes
  return { onAtMin, offAtMin, lookAtMin: offAtMin, coolUntilMin: offAtMin + heatHabits.coolingMin }
}

/**
 * How many times as fast a lightener works under heat as at the warmth of the scalp: the spread of the activation
 * energy, and of the warmth where nobody has measured it. Cooler air than the scalp slows nothing down.
 */
export function heatFactor(warmthC: number | null): Range {
  const warmth = warmthC === null ? heatHabits.warmthC : { low: warmthC, high: warmthC }
  const { activationKJ } = liftPriors
  const factor = (end: "low" | "high") =>
    Math.max(1, temperatureFactor(activationKJ[end], liftReference.temperatureC, warmth[end]))
  const mid = temperatureFactor(middle(activationKJ), liftReference.temperatureC, middle(warmth))
  return { low: factor("low"), mid: Math.max(1, mid), high: factor("high") }
}

/** Minutes on until ready with heat on the way: the soonest by the fastest, the latest by the slowest. */
export function readyUnderHeat(
  readyMin: Range,
  onAtMin: number,
  heat: HeatTimes | null,
  faster: Range,
): Range {
  if (!heat) return readyMin
  const { lagMin } = liftPriors
  const [fromMin, toMin] = [heat.onAtMin - onAtMin, heat.offAtMin - onAtMin]
  const under = (minutes: number, factor: number, lag: number) =>
    hastened(minutes, factor, { fromMin: Math.max(fromMin, lag), toMin })
  return {
    low: under(readyMin.low, faster.high, lagMin.low),
    mid: under(readyMin.mid, faster.mid, middle(lagMin)),
    high: under(readyMin.high, faster.low, lagMin.high),
  }
}

/** Minutes that so many minutes' work takes when a stretch of them counts more than once. */
export function hastened(
  minutes: number,
  factor: number,
  { fromMin, toMin }: { fromMin: number; toMin: number },
) {
  const left = minutes - Math.max(0, fromMin)
  const heated = Math.min(toMin - Math.max(0, fromMin), left / factor)
  return left <= 0 || heated <= 0 ? minutes : minutes - heated * (factor - 1)
}

const middle = ({ low, high }: { low: number; high: number }) => (low + high) / 2

/** A foil on the head, before it comes off. */
export type OnHead = {
  foil: TimedFoil
  /** Where the bowls that serve it stand: one for each mix along its strand. */
  bowls: readonly number[]
  person: number | null
  onAtMin: number
  placedAtMin: number
  /** When it was opened again for its roots, and closed; none of one visit, nor while they are not on. */
  rootsOn?: { onAtMin: number; placedAtMin: number } | undefined
}

/** The earlier of the limits of its coats, each counted from its own start. */
export const limitAtMin = ({ foil, onAtMin, rootsOn }: OnHead): number => {
  const limitMin = onAtMin + foil.limitMin
  return rootsOn && foil.roots?.later
    ? Math.min(limitMin, rootsOn.onAtMin + foil.roots.later.limitMin)
    : limitMin
}

type Around = { heat: HeatTimes | null; service: Service }

/** When it is closed for good. */
export const closedAtMin = ({ placedAtMin, rootsOn }: OnHead) => rootsOn?.placedAtMin ?? placedAtMin

export const readyOn = (floor: Around, placed: OnHead): Range =>
  floor.heat || placed.foil.roots?.later ? laterOf(coatsReadyOn(floor, placed)) : readyOf(placed.foil)

/** Minutes from first contact until each coat of a foil is ready, in the order they go on, with the heat on the way. */
export function coatsReadyOn({ heat, service }: Around, { foil, onAtMin, rootsOn }: OnHead): Range[] {
  const ready = coatsReady(foil)
  const isLater = foil.roots?.later !== undefined
  if (!heat && !isLater) return ready
  const faster = heatFactor(service.heat?.warmthC ?? null)
  return ready.map((range, coat) => {
    if (!isLater || coat === 0) return heat ? readyUnderHeat(range, onAtMin, heat, faster) : range
    // What is not on is never ready.
    if (!rootsOn) return laterBy(range, Number.POSITIVE_INFINITY)
    const own = heat ? readyUnderHeat(range, rootsOn.onAtMin, heat, faster) : range
    return laterBy(own, rootsOn.onAtMin - onAtMin)
  })
}

/** Minute at which all that is on a foil is expected to be at the goal; one that is not ready by its limit comes off then. */
export const goalAtMin = (service: Service, placed: OnHead): number =>
  Math.min(placed.onAtMin + readyOn({ heat: null, service }, placed).mid, limitAtMin(placed))
