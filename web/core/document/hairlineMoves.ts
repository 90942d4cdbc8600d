import { type HeadSide, headSides } from "../../../geometry/scalp/hairline"
import { type LandmarkName, landmarkNames } from "../../../geometry/scalp/hairlineLandmarks"
import {
  type HairlineMoves,
  isOnMidline,
  type LandmarkMove,
  noMoves,
} from "../../../geometry/scalp/landmarkMoves"
import type { HairlinePlan, LandmarkMoveRow } from "./hairlineSchema"

/** Which sides of the head a change is for. */
export type Sides = HeadSide | "both"

const on = (side: HeadSide) => (row: LandmarkMoveRow) => row.side === side || row.side === "both"

/** The moves of a hairline, side by side. */
export function movesOf({ moves }: HairlinePlan): HairlineMoves {
  if (!moves || moves.length === 0) return noMoves
  const ofSide = (side: HeadSide) =>
    new Map(
      moves
        .filter(on(side))
        .map(({ landmark, towardNapeMm, behindMm }) => [landmark, { towardNapeMm, behindMm }]),
    )
  return { left: ofSide("left"), right: ofSide("right") }
}

/** The hairline with other moves: a landmark that both sides move alike is written once, one that is not moved is not written. */
export function withMoves({ form }: HairlinePlan, moves: HairlineMoves): HairlinePlan {
  const rows = landmarkNames.flatMap((landmark) => rowsOf(landmark, moves))
  return rows.length === 0 ? { form } : { form, moves: rows }
}

function rowsOf(landmark: LandmarkName, moves: HairlineMoves): LandmarkMoveRow[] {
  const [left, right] = headSides.map((side) => moved(moves[side].get(landmark)))
  if (left && right && left.towardNapeMm === right.towardNapeMm && left.behindMm === right.behindMm)
    return [{ landmark, side: "both", ...left }]
  return [
    ...(left ? [{ landmark, side: "left" as const, ...left }] : []),
    ...(right ? [{ landmark, side: "right" as const, ...right }] : []),
  ]
}

/** A move to a tenth of a millimetre; none when that is nothing. */
function moved(move: LandmarkMove | undefined): LandmarkMove | null {
  if (!move) return null
  const [towardNapeMm, behindMm] = [move.towardNapeMm, move.behindMm].map(
    (mm) => Math.round(mm * 10) / 10 + 0,
  )
  return towardNapeMm === 0 && behindMm === 0 ? null : { towardNapeMm, behindMm }
}

/** The sides on which a landmark is changed: those of the middle on both at once. */
export const sidesOf = (name: LandmarkName, sides: Sides): readonly HeadSide[] =>
  sides === "both" || isOnMidline(name) ? headSides : [sides]
