import { type HairlineFault, hairlineFault } from "../../../geometry/scalp/hairlineFault"
import { isOnMidline } from "../../../geometry/scalp/landmarkMoves"
import type { HairlinePlan, LandmarkMoveRow } from "../document/hairlineSchema"
import type { Plan } from "../document/schema"
import { headOf } from "../figures/measured"
import { type Problem, problemAt } from "./problem"

/** Why a line cannot be a hairline, and what would do. */
export const hairlineFaultWords: Record<HairlineFault, string> = {
  "crosses-itself": "the hairline would cross itself: keep each landmark between its neighbours",
  "over-ear": "the hairline would run over the ear: keep it round the ear",
  "on-face": "no hairline runs below the brows or over the cheek: keep it above them",
  "off-scalp": "that is off the scalp: keep the hairline on the head",
  "across-middle": "the hairline of one side would run over the middle of the head: keep it on its own side",
}

/** What is wrong with the moves of a hairline, or with the line that they make. */
export function hairlineProblems({ head }: Pick<Plan, "head">): Problem[] {
  const { moves = [] } = head.hairline
  if (moves.length === 0) return []
  const problems = moves.flatMap((row, i) => rowProblem(row, i, head.hairline))
  if (problems.length > 0) return problems
  const found = hairlineFault(headOf({ head }))
  return found ? [problemAt(["head", "hairline"], `${found.side}: ${hairlineFaultWords[found.fault]}`)] : []
}

function rowProblem(row: LandmarkMoveRow, i: number, { moves = [] }: HairlinePlan): Problem[] {
  const path = ["head", "hairline", "moves", i]
  if (isOnMidline(row.landmark) && (row.side !== "both" || row.towardNapeMm !== 0))
    return [problemAt(path, `expected ${row.landmark} moved on both sides and up or down the middle alone`)]
  const first = moves.findIndex((other) => other.landmark === row.landmark && meet(other, row))
  return first < i
    ? [
        problemAt(
          path,
          `expected each landmark once a side, but ${row.landmark} is moved in number ${first + 1} of the list`,
        ),
      ]
    : []
}

const meet = (a: LandmarkMoveRow, b: LandmarkMoveRow) =>
  a.side === b.side || a.side === "both" || b.side === "both"
