import type { Range } from "../../../geometry/hair/tradeFigures"
import { levelScale, levelSeenSd, strandTestRows } from "../../../presets/timing/lift"
import type { Refusal } from "../document/schema"
import { numberText } from "../text/numberText"
import type { LiftConditions, LiftTraits } from "./lift"
import { levelRefusal, levelsGained } from "./lift"
import type { Weighted } from "./liftGrid"
import { gainedRange, readyRange, weighByRows } from "./liftGrid"

/** One look at a test strand, or at a foil. */
export type LevelSeen = { minutes: number; level: number }

export type NarrowedLift = {
  traits: Weighted<LiftTraits>[]
  /** How far the rows lie from the middle curve, levels, root mean square. */
  misfitLevels: number
}

/** "Look from minute a, expected b to c, never past d": minutes on. */
export type LookWindow = {
  lookFromMin: number
  /** Ends that come after the longest time are infinite: not expected in time. */
  expectedMin: Range
  neverPastMin: number
}

/** Narrows what is known of lift by what was seen on a strand, or says what is wrong with the rows. */
export function narrowLift(
  prior: readonly Weighted<LiftTraits>[],
  {
    rows,
    startLevel,
    conditions,
  }: { rows: readonly LevelSeen[]; startLevel: number; conditions: LiftConditions },
): NarrowedLift | Refusal {
  const refusal = rowsRefusal(rows, startLevel, conditions.longestMin)
  if (refusal) return refusal
  const gains = rows.map(({ minutes, level }) => ({ minutes, seen: level - startLevel }))
  const foretell = (of: LiftTraits, minutes: number) => levelsGained(of, conditions, minutes)
  const traits = weighByRows(prior, gains, { foretell, sd: levelSeenSd })
  const misses = gains.map(({ minutes, seen }) => (gainedRange(traits, conditions, minutes).mid - seen) ** 2)
  return { traits, misfitLevels: Math.sqrt(misses.reduce((a, b) => a + b, 0) / misses.length) }
}

export function lookWindow(
  traits: readonly Weighted<LiftTraits>[],
  { conditions, levels, firstLookMin }: { conditions: LiftConditions; levels: number; firstLookMin: number },
): LookWindow {
  const expectedMin = readyRange(traits, conditions, levels)
  const neverPastMin = conditions.longestMin
  const lookFromMin = Math.min(firstLookMin, Math.floor(expectedMin.low), neverPastMin)
  return { lookFromMin, expectedMin, neverPastMin }
}

/** The window as one sentence. Whole minutes: earlier at the near end, later at the far end. */
export function lookWindowText({
  lookFromMin,
  expectedMin: { low, high },
  neverPastMin,
}: LookWindow): string {
  const [from, to, never] = [Math.floor(low), Math.ceil(high), numberText(neverPastMin)]
  const look = `Look from minute ${numberText(lookFromMin)}`
  if (low > neverPastMin) return `${look}, not expected to be ready in time, never past ${never}.`
  if (high > neverPastMin)
    return `${look}, expected from ${from} but perhaps not in time, never past ${never}.`
  return `${look}, expected ${from} to ${to}, never past ${never}.`
}

function rowsRefusal(rows: readonly LevelSeen[], startLevel: number, longestMin: number): Refusal | null {
  if (rows.length === 0) return refuse("A strand test needs at least one row: minutes and the level seen.")
  if (rows.length > strandTestRows) return refuse(`A strand test has at most ${strandTestRows} rows.`)
  const start = levelRefusal("The level to start from", startLevel)
  if (start) return start
  let before: LevelSeen = { minutes: 0, level: startLevel }
  for (const [at, row] of rows.entries()) {
    const refusal = rowRefusal(row, before, { name: `Row ${at + 1}`, longestMin })
    if (refusal) return refusal
    before = row
  }
  return null
}

function rowRefusal(
  { minutes, level }: LevelSeen,
  before: LevelSeen,
  { name, longestMin }: { name: string; longestMin: number },
): Refusal | null {
  if (!(minutes > before.minutes))
    return refuse(
      `${name} is at ${numberText(minutes)} minutes, which is not after ${numberText(before.minutes)}: put the rows in order of time.`,
    )
  if (minutes > longestMin)
    return refuse(
      `${name} is at ${numberText(minutes)} minutes, past the product's longest time of ${numberText(longestMin)}.`,
    )
  if (level > levelScale.lightest || !(level >= levelScale.darkest))
    return levelRefusal(`${name}: the level seen`, level)
  if (level < before.level)
    return refuse(
      `${name} is level ${numberText(level)}, darker than level ${numberText(before.level)} before it: hair does not go back, look at the row again.`,
    )
  return null
}

const refuse = (refused: string): Refusal => ({ refused })
