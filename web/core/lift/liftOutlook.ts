import type { Range } from "../../../geometry/hair/tradeFigures"
import { gainedRange } from "./liftGrid"
import type { LiftKnown } from "./liftOfPlan"
import type { LiftGoal } from "./scheduleReady"
import { type DarkerRow, type LookWindow, lookWindow, type StrandFault } from "./strandTest"

/** Levels by minutes on, with the band, and what follows for the looks. */
export type LiftOutlook = {
  curve: readonly { minutes: number; level: Range }[]
  longestMin: number
  /** Null without a goal. */
  window: LookWindow | null
  /** What is wrong with the strand test. */
  problem: StrandFault | null
  misfitLevels: number | null
  /** Rows of the strand to look at again: darker than eyes are off by. */
  darker: readonly DarkerRow[]
  isBorrowed: boolean
}

const stepMin = 2.5

/** The curve of a mix from a level, to its longest time. */
export function liftOutlook(
  { conditions, traits, narrowed, isBorrowed }: LiftKnown,
  { startLevel, goal, firstLookMin }: { startLevel: number; goal: LiftGoal | null; firstLookMin: number },
): LiftOutlook {
  const steps = Math.floor(conditions.longestMin / stepMin)
  const curve = Array.from({ length: steps + 1 }, (_, step) => {
    const minutes = step * stepMin
    const { low, mid, high } = gainedRange(traits, conditions, minutes)
    return { minutes, level: { low: startLevel + low, mid: startLevel + mid, high: startLevel + high } }
  })
  const levels = goal && goal.toLevel - startLevel
  const isRefused = narrowed !== null && "refused" in narrowed
  return {
    curve,
    longestMin: conditions.longestMin,
    window: levels === null ? null : lookWindow(traits, { conditions, levels, firstLookMin }),
    problem: isRefused ? narrowed.refused : null,
    isBorrowed,
    misfitLevels: narrowed && !isRefused ? narrowed.misfitLevels : null,
    darker: narrowed && !isRefused ? narrowed.darker : [],
  }
}
