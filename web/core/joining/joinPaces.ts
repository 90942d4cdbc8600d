import type { Range } from "../../../geometry/hair/tradeFigures"
import type { FoilKind } from "../../../geometry/section/section"
import { calibrationFigures } from "../../../presets/weighing/calibrationFigures"
import { joiningFigures } from "../../../presets/weighing/joiningFigures"
import type { Estimate } from "../statistics/randomEffects"
import { studentQuantile } from "../statistics/studentT"
import type { LearnRow } from "./learnRow"
import { type Nested, nestedEffects } from "./nestedEffects"

type PaceRow = Extract<LearnRow, { row: "pace" }>

/** The pace of one kind over salons: what a new pair of hands in a new salon may take, 80 %. */
export type JoinedPace = Nested & { paceMin: Range }

/**
 * Minutes a foil by ratio, hands within salons: a pair's mean is off by its foils' own scatter over the root of their
 * number, hands differ within a salon, and salons differ (nestedEffects). A new pair's range is Student's, with a degree
 * of freedom for each salon but one (Higgins, Thompson, Spiegelhalter, J R Stat Soc A 2009;172:137). Null for too few.
 */
export function joinPaces(salons: readonly (readonly LearnRow[])[], kind: FoilKind): JoinedPace | null {
  const own = salons
    .map((rows) => rows.flatMap((row) => (row.row === "pace" && row.kind === kind ? [row] : [])))
    .filter((rows) => rows.length > 0)
  if (own.length < joiningFigures.leastSalons) return null
  const share = scatterShare(own.flat())
  const groups = own.map((rows) => rows.map((row) => estimateOf(row, share)))
  const joined = nestedEffects(groups, 0)
  const reach =
    studentQuantile((1 + calibrationFigures.rangeProbability) / 2, joined.groups - 1) *
    Math.sqrt(joined.ofNew)
  const at = (ends: number) => Math.exp(joined.mean + ends * reach)
  return { ...joined, paceMin: { low: at(-1), mid: at(0), high: at(1) } }
}

/** The scatter of one foil about its hands' mean, as a share of it, over all hands. */
function scatterShare(rows: readonly PaceRow[]): number {
  const free = rows.reduce((sum, { foils }) => sum + foils - 1, 0)
  const squares = rows.reduce(
    (sum, { foils, minutes, spreadMin }) => sum + (foils - 1) * (spreadMin / minutes) ** 2,
    0,
  )
  return Math.sqrt(squares / Math.max(1, free))
}

const estimateOf = ({ foils, minutes }: PaceRow, share: number): Estimate => ({
  value: Math.log(minutes),
  variance: Math.max(1e-6, share ** 2 / foils),
})
