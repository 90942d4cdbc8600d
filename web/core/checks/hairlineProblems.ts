import { hairlineFault } from "../../../geometry/scalp/hairlineFault"
import { isOnMidline } from "../../../geometry/scalp/landmarkMoves"
import type { HairlinePlan, LandmarkMoveRow } from "../document/hairlineSchema"
import type { Plan } from "../document/schema"
import type { Problem } from "../fields/problem"
import { headOf } from "../figures/measured"
import { problemAt } from "./problem"

/** What is wrong with the moves of a hairline, or with the line that they make. */
export function hairlineProblems({ head }: Pick<Plan, "head">): Problem[] {
  const { moves = [] } = head.hairline
  if (moves.length === 0) return []
  const problems = moves.flatMap((row, i) => rowProblem(row, i, head.hairline))
  if (problems.length > 0) return problems
  const found = hairlineFault(headOf({ head }))
  return found ? [problemAt(["head", "hairline"], { code: "hairline", ...found })] : []
}

function rowProblem(row: LandmarkMoveRow, i: number, { moves = [] }: HairlinePlan): Problem[] {
  const path = ["head", "hairline", "moves", i]
  if (isOnMidline(row.landmark) && (row.side !== "both" || row.towardNapeMm !== 0))
    return [problemAt(path, { code: "landmark-off-middle", landmark: row.landmark })]
  const first = moves.findIndex((other) => other.landmark === row.landmark && meet(other, row))
  return first < i
    ? [problemAt(path, { code: "landmark-twice", landmark: row.landmark, firstPlace: first + 1 })]
    : []
}

const meet = (a: LandmarkMoveRow, b: LandmarkMoveRow) =>
  a.side === b.side || a.side === "both" || b.side === "both"
