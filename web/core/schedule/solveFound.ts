import type { Arrangement, Spread } from "./solveBlocks"
import { spreadMin } from "./solveBlocks"

/** An arrangement that was tried, and how far apart its foils come to the goal. */
export type Found = { arrangement: Arrangement; spread: Spread }

/** What was best in its turn, the best of all last. */
export type BestSoFar = readonly [Found, ...Found[]]

/** With one more that was tried, where it is better than the last. */
export function withTried(best: BestSoFar, found: Found): BestSoFar {
  const last = best[best.length - 1]
  return better(last, found) === found && found !== last ? [...best, found] : best
}

/** How a search may go on: whether the order may change, how to try an arrangement, and how many tries are left. */
export type Climb = { mayReorder: boolean; look: (arrangement: Arrangement) => Found; tries: number }

/** The one whose foils come closer together; of two as close, the one whose foils wait less in all. */
export function better(a: Found, b: Found): Found {
  const closerMin = spreadMin(a.spread) - spreadMin(b.spread)
  if (Math.abs(closerMin) > tolerance) return closerMin > 0 ? b : a
  return b.spread.waitMin < a.spread.waitMin - tolerance ? b : a
}

const tolerance = 1e-9
