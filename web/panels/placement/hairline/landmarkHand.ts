import type { LandmarkMove } from "../../../../geometry/scalp/landmarkMoves"
import { isOnMidline } from "../../../../geometry/scalp/landmarkMoves"
import type { SidedLandmark } from "../../../../geometry/scalp/nearestLandmark"
import { type SurfacePoint, surfacePoint } from "../../../../geometry/surface/frames"
import { headInHand } from "../../../core/checks/hairlineDraft"
import { hairlineWith, moveLandmark, moveToPlace } from "../../../core/edits/plan/moveLandmark"
import { headOf } from "../../../core/figures/measured"
import { announce, announceRefusal } from "../../../session/announcements"
import { commit } from "../../../session/commit"
import { hairlineStore, sidesInHand } from "../../../session/hairlineStore"
import { planStore } from "../../../session/planStore"
import { refusalWords, words } from "../../../session/words"

/** What hands and keys do to a landmark. The move under a hand is shown, and enters the plan once, when it is let go. */

const tenth = (mm: number) => Math.round(mm * 10) / 10 + 0

/** The move that brings a landmark under a hand, to a tenth of a millimetre. */
function moveUnder(landmark: SidedLandmark, at: SurfacePoint): LandmarkMove {
  const plan = planStore.getState().present
  const onMidline = isOnMidline(landmark.name) ? surfacePoint(0, at[1]) : at
  const { towardNapeMm, behindMm } = moveToPlace(plan, landmark, onMidline)
  return { towardNapeMm: tenth(towardNapeMm), behindMm: tenth(behindMm) }
}

const offHead = () => words().placement.hairline.offHead

/** Shows the hairline as it would be with a landmark at a place; the last good one, and why, where it cannot be. */
export function showLandmarkAt(landmark: SidedLandmark, at: SurfacePoint | null) {
  const plan = planStore.getState().present
  const { draft, together } = hairlineStore.getState()
  const lastGood = { head: draft?.head ?? headOf(plan), move: draft?.move ?? null }
  const refuse = (refused: string) => hairlineStore.setState({ draft: { ...lastGood, refused } })
  if (!at) return refuse(offHead())
  const sides = sidesInHand(landmark, together)
  const move = moveUnder(landmark, at)
  const tried = headInHand(plan, hairlineWith(plan.head.hairline, landmark.name, sides, move))
  if ("refused" in tried) refuse(refusalWords(tried.refused))
  else hairlineStore.setState({ draft: { head: tried.head, move, refused: null } })
}

/** The hand lets go: one change, or a refusal and all stays as it was. */
export function dropLandmark(landmark: SidedLandmark, at: SurfacePoint | null) {
  const { draft } = hairlineStore.getState()
  hairlineStore.setState({ draft: null })
  if (!draft) return
  if (draft.refused || !at) announceRefusal(words().placement.hairline.stays(draft.refused ?? offHead()))
  else changeLandmark(landmark, moveUnder(landmark, at))
}

export const forgetLandmark = () => hairlineStore.setState({ draft: null })

/** Moves a landmark and says how far it is now from where the form has it; false when it was refused. Changes with the same key are one step of undo. */
export function changeLandmark(landmark: SidedLandmark, move: LandmarkMove, key?: string): boolean {
  const sides = sidesInHand(landmark, hairlineStore.getState().together)
  const { name } = landmark
  const isMoved = commit(
    { chapter: "placement", code: "move-landmark", name, sides },
    moveLandmark(name, sides, move),
    key,
  )
  if (isMoved) announce(words().placement.hairline.movedNow({ name, sides, move }))
  return isMoved
}

/** Moves a landmark to a place by the keys. */
export const nudgeLandmark = (landmark: SidedLandmark, at: SurfacePoint) =>
  changeLandmark(landmark, moveUnder(landmark, at), `nudge ${landmark.side} ${landmark.name}`)
