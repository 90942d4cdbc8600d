import { strandTestRows } from "../../../presets/timing/lift"
import type { LevelSeen } from "../lift/strandTest"
import type { LearnRow } from "./learnRow"

type StrandRow = Extract<LearnRow, { row: "strand" }>

/** The looks at one strand in order, what it was in, and what is wrong with them. */
export type StrandRows = {
  strand: number
  first: StrandRow
  looks: readonly LevelSeen[]
  /** Out of order of time; printed levels the wrong way round; looks of different tests under one number; too many. */
  fault: "order" | "printed" | "alike" | "too-many" | null
}

export function strandsOf(rows: readonly LearnRow[]): StrandRows[] {
  const looks = rows.flatMap((row) => (row.row === "strand" ? [row] : []))
  return [...new Set(looks.map(({ strand }) => strand))].map((strand) => {
    const own = looks.filter((row) => row.strand === strand)
    return {
      strand,
      first: own[0],
      looks: own.map(({ minutes, level }) => ({ minutes, level })),
      fault: faultOf(own),
    }
  })
}

function faultOf(own: readonly StrandRow[]): StrandRows["fault"] {
  const [first] = own
  if (own.length > strandTestRows) return "too-many"
  if (first.printedLowLevels > first.printedHighLevels) return "printed"
  const isAlike = own.every(
    (row) =>
      row.onHeadPercent === first.onHeadPercent &&
      row.printedLowLevels === first.printedLowLevels &&
      row.printedHighLevels === first.printedHighLevels &&
      row.longestMin === first.longestMin &&
      row.startLevel === first.startLevel,
  )
  if (!isAlike) return "alike"
  const isInOrder = own.every(
    ({ minutes, longestMin }, at) => minutes <= longestMin && (at === 0 || minutes > own[at - 1].minutes),
  )
  return isInOrder ? null : "order"
}
