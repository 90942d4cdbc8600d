import type { Range } from "../../../geometry/hair/tradeFigures"
import type { FoilKind } from "../../../geometry/section/section"
import { extraMin, foilMin, paceWeightFoils, type Skill } from "../../../presets/timing/pace"
import type { StartFigures } from "../document/salon"
import type { Chair } from "./chair"

/** Minutes to place a foil of a kind, before anything of this person has been recorded; usual skill as other salons told it. */
export function usualPace(skill: Skill, kind: FoilKind, start?: StartFigures): Range {
  const told = skill === "usual" ? start?.paceMin?.[kind] : undefined
  if (told) return told
  const [foil, extra] = [foilMin[skill], extraMin[kind]]
  return { low: foil.low + extra.low, mid: foil.mid + extra.mid, high: foil.high + extra.high }
}

/**
 * A pace after so many foils of that kind were timed: the mean of them and of the pace it starts from, which weighs
 * as a few foils; the spread narrows with the square root of their number.
 */
export function learnPace(start: Range, timedMin: readonly number[]): Range {
  const timed = timedMin.reduce((total, minutes) => total + minutes, 0)
  const mid = (start.mid * paceWeightFoils + timed) / (paceWeightFoils + timedMin.length)
  const narrowing = Math.sqrt(paceWeightFoils / (paceWeightFoils + timedMin.length))
  const ratio = (end: number) => 1 + (end / start.mid - 1) * narrowing
  return { low: mid * ratio(start.low), mid, high: mid * ratio(start.high) }
}

/** One foil timed at the chair, and which pair of hands placed it. */
export type TimedAtChair = { foil: string; minutes: number; by: 1 | 2 }

/** Minutes each foil took, from one tap "on" of a pair of hands to its next, where nothing but foils came between. */
export function timedFoils({ log }: Pick<Chair, "log">): TimedAtChair[] {
  const live = log.filter(({ undone, tap }) => !undone && tap.kind !== "looked")
  const timed: TimedAtChair[] = []
  const before = new Map<1 | 2, { foil: string; atMs: number }>()
  for (const { tap, atMs } of live) {
    if (tap.kind !== "on") {
      before.clear()
      continue
    }
    const by = tap.by ?? 1
    const last = before.get(by)
    if (last) timed.push({ foil: last.foil, minutes: (atMs - last.atMs) / 60_000, by })
    before.set(by, { foil: tap.foil, atMs })
  }
  return timed
}
