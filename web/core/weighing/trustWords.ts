import { calibrationFigures } from "../../../presets/weighing/calibrationFigures"
import { numberText } from "../text/numberText"
import type { Trust } from "./weighingsNeeded"

/** How far the middle figure may be out, and how many more weighings it takes, in sentences. */
export function trustWords({ withinShare, more }: Trust): string {
  const percent = (share: number) => `${numberText(100 * share, 0)} %`
  const { share, probability } = calibrationFigures.trust
  if (!(withinShare < 1))
    return "These weighings do not agree well enough to say how far the middle figure may be out."
  const stands = `The middle figure is within ${percent(withinShare)} of the truth, 9 times in 10.`
  if (more === 0) return `${stands} It can be trusted.`
  const remaining =
    more === null
      ? "More weighings than anyone would make"
      : `${more} more ${more === 1 ? "weighing" : "weighings"}`
  return `${stands} ${remaining} like these would bring it within ${percent(share)}, ${numberText(10 * probability)} times in 10.`
}
