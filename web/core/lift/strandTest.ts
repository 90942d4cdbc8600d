import type { Range } from "../../../geometry/hair/tradeFigures"
import { levelScale, levelSeenSd, levelWrittenStep, strandTestRows } from "../../../presets/timing/lift"
import type { LiftConditions, LiftTraits } from "./lift"
import { isOnScale, levelsGained } from "./lift"
import type { Weighted } from "./liftGrid"
import { gainedRange, readyRange, weighByRows } from "./liftGrid"

/** One look at a test strand, or at a foil. */
export type LevelSeen = { minutes: number; level: number }

/** A row seen darker than the lightest before it by more than two readings differ by themselves; it is taken as seen. */
export type DarkerRow = Extract<StrandFault, { code: "darker" }>

export type NarrowedLift = {
  traits: Weighted<LiftTraits>[]
  /** Rows to look at again; hair does not go back. */
  darker: readonly DarkerRow[]
  /** How far the rows lie from the middle curve, levels, root mean square. */
  misfitLevels: number
}

/** What is wrong with the rows of a strand test; rows count from 1. */
export type StrandFault =
  | { code: "no-rows" }
  | { code: "too-many-rows"; most: number }
  | { code: "start-off-scale"; level: number; darkest: number; lightest: number }
  | { code: "row-off-scale"; row: number; level: number; darkest: number; lightest: number }
  | { code: "out-of-order"; row: number; minutes: number; beforeMin: number }
  | { code: "past-longest"; row: number; minutes: number; longestMin: number }
  | { code: "darker"; row: number; level: number; beforeLevel: number }

/** "Check from minute a, expected b to c, max time d": minutes on. */
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
): NarrowedLift | { refused: StrandFault } {
  const fault = rowsFault(rows, startLevel, conditions.longestMin)
  if (fault) return { refused: fault }
  const gains = rows.map(({ minutes, level }) => ({ minutes, seen: level - startLevel }))
  const foretell = (of: LiftTraits, minutes: number) => levelsGained(of, conditions, minutes)
  const traits = weighByRows(prior, gains, { foretell, sd: writtenSd })
  const misses = gains.map(({ minutes, seen }) => (gainedRange(traits, conditions, minutes).mid - seen) ** 2)
  return {
    traits,
    darker: darkerRows(rows, startLevel),
    misfitLevels: Math.sqrt(misses.reduce((a, b) => a + b, 0) / misses.length),
  }
}

/** An eye is off by so much, and what it sees is written in steps: an even blur of a step has a twelfth of its square. */
const writtenSd = Math.hypot(levelSeenSd, levelWrittenStep / Math.sqrt(12))

/** An eye is off by half a level: a row up to two standard deviations darker than one before it is what eyes see. */
const mostDarker = 2 * levelSeenSd

function darkerRows(rows: readonly LevelSeen[], startLevel: number): DarkerRow[] {
  let lightest = startLevel
  return rows.flatMap(({ level }, at): DarkerRow[] => {
    const before = lightest
    lightest = Math.max(lightest, level)
    return level < before - mostDarker ? [{ code: "darker", row: at + 1, level, beforeLevel: before }] : []
  })
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

function rowsFault(rows: readonly LevelSeen[], startLevel: number, longestMin: number): StrandFault | null {
  if (rows.length === 0) return { code: "no-rows" }
  if (rows.length > strandTestRows) return { code: "too-many-rows", most: strandTestRows }
  if (!isOnScale(startLevel)) return { code: "start-off-scale", level: startLevel, ...levelScale }
  let before: LevelSeen = { minutes: 0, level: startLevel }
  for (const [at, row] of rows.entries()) {
    const fault = rowFault(row, before, { row: at + 1, longestMin })
    if (fault) return fault
    before = row
  }
  return null
}

function rowFault(
  { minutes, level }: LevelSeen,
  before: LevelSeen,
  { row, longestMin }: { row: number; longestMin: number },
): StrandFault | null {
  if (!(minutes > before.minutes)) return { code: "out-of-order", row, minutes, beforeMin: before.minutes }
  if (minutes > longestMin) return { code: "past-longest", row, minutes, longestMin }
  if (!isOnScale(level)) return { code: "row-off-scale", row, level, ...levelScale }
  return null
}
