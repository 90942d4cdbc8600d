import { createStore } from "zustand/vanilla"
import type { Head } from "../../geometry/scalp/head"
import { isOnMidline, type LandmarkMove } from "../../geometry/scalp/landmarkMoves"
import type { SidedLandmark } from "../../geometry/scalp/nearestLandmark"
import type { Sides } from "../core/document/hairlineMoves"

/** How the hairline is worked on. Never saved, never undone. */
export type HairlineSession = {
  selected: SidedLandmark
  /** A landmark is moved on both sides alike, or on its own. */
  together: boolean
  /** The head with the line in hand, or the last good one and why a hand has gone too far. */
  draft: { head: Head; move: LandmarkMove | null; refused: string | null } | null
}

export const hairlineStore = createStore<HairlineSession>(() => ({
  selected: { name: "temple", side: "right" },
  together: true,
  draft: null,
}))

/** The sides that a change of a landmark is for. */
export const sidesInHand = ({ name, side }: SidedLandmark, together: boolean): Sides =>
  together || isOnMidline(name) ? "both" : side

/** Takes a landmark in hand. One in the middle is on no side: the side that is worked on stays as it was. */
export const chooseLandmark = ({ name, side }: SidedLandmark) =>
  hairlineStore.setState(({ selected }) => ({
    selected: { name, side: isOnMidline(name) ? selected.side : side },
  }))
