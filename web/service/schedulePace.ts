import type { FoilKind } from "../../geometry/section/section"
import type { Range } from "../../geometry/tradeFigures"
import { extraMin, foilMin, paceWeightFoils, type Skill } from "../../presets/pace"
import type { Chair } from "./chairClock"

/** Minutes to place a foil of a kind, before anything of this person has been recorded. */
export function usualPace(skill: Skill, kind: FoilKind): Range {
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

/** Minutes each foil took, from one tap "on" to the next where nothing but foils came between: for one pair of hands. */
export function timedFoils({ log }: Pick<Chair, "log">): { foil: string; minutes: number }[] {
  const live = log.filter(({ undone, tap }) => !undone && tap.kind !== "looked")
  return live.slice(1).flatMap(({ tap, atMs }, at) => {
    const before = live[at]
    if (tap.kind !== "on" || before.tap.kind !== "on") return []
    return [{ foil: before.tap.foil, minutes: (atMs - before.atMs) / 60_000 }]
  })
}
