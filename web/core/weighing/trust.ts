import { calibrationFigures } from "../../../presets/weighing/calibrationFigures"
import type { Trust } from "./weighingsNeeded"

/** How far the middle figure may be out, and how many more weighings it takes. */
export type TrustCode =
  | { code: "no-agreement" }
  | { code: "trusted"; withinShare: number }
  | { code: "more-needed"; withinShare: number; more: number }
  | { code: "too-many-needed"; withinShare: number }

const { leastWeighings } = calibrationFigures.trust

/** Weighings still to be made: never fewer than a calibration asks for in all, however well the first ones agree. */
export const weighingsAsked = ({ more }: Trust, weighed: number): number | null =>
  more === null ? null : Math.max(0, more, leastWeighings - weighed)

export function trustCode(trust: Trust, weighed: number): TrustCode {
  const { withinShare } = trust
  const more = weighingsAsked(trust, weighed)
  if (!(withinShare < 1)) return { code: "no-agreement" }
  if (more === null) return { code: "too-many-needed", withinShare }
  return more === 0 ? { code: "trusted", withinShare } : { code: "more-needed", withinShare, more }
}
