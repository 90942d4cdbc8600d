import { followMoves } from "../../../../geometry/scalp/followMoves"
import { type LandmarkName, landmarkNames } from "../../../../geometry/scalp/hairlineLandmarks"
import { formControls } from "../../../../geometry/scalp/head"
import { type LandmarkMove, moveTo } from "../../../../geometry/scalp/landmarkMoves"
import type { SidedLandmark } from "../../../../geometry/scalp/nearestLandmark"
import { mirrored, type SurfacePoint } from "../../../../geometry/surface/frames"
import type { Edit } from "../../document/edit"
import { movesOf, type Sides, sidesOf, withMoves } from "../../document/hairlineMoves"
import type { HairlinePlan } from "../../document/hairlineSchema"
import type { Plan } from "../../document/schema"
import { headOf } from "../../figures/measured"
import { changeHairline } from "./fitHairline"

/** Moves a landmark of the hairline so far from where the form has it, on one side or on both. What is drawn near it goes along. */
export const moveLandmark =
  (name: LandmarkName, sides: Sides, move: LandmarkMove): Edit =>
  (plan) =>
    changeHairline(plan, hairlineWith(plan.head.hairline, name, sides, move), followMoves)

/** Puts a landmark back where the form has it, or all of them. */
export const restoreLandmarks =
  (names: readonly LandmarkName[] = landmarkNames, sides: Sides = "both"): Edit =>
  (plan) => {
    const hairline = names.reduce<HairlinePlan>(
      (each, name) => hairlineWith(each, name, sides, { towardNapeMm: 0, behindMm: 0 }),
      plan.head.hairline,
    )
    return changeHairline(plan, hairline, followMoves)
  }

/** A hairline with one landmark moved so far. */
export function hairlineWith(
  hairline: HairlinePlan,
  name: LandmarkName,
  sides: Sides,
  move: LandmarkMove,
): HairlinePlan {
  const moves = movesOf(hairline)
  const changed = sidesOf(name, sides).map((side) => [side, new Map(moves[side]).set(name, move)])
  return withMoves(hairline, { ...moves, ...Object.fromEntries(changed) })
}

/** The move that brings a landmark of one side to a place. */
export function moveToPlace(
  plan: Pick<Plan, "head">,
  { name, side }: SidedLandmark,
  at: SurfacePoint,
): LandmarkMove {
  const { axes, surface } = headOf(plan)
  const controls = formControls(axes, surface, plan.head.hairline.form)
  return moveTo(surface, controls, name, side === "left" ? mirrored(at) : at)
}
