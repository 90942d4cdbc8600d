import type { LandmarkName } from "../../../../geometry/scalp/hairlineLandmarks"
import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { LandmarkCode } from "../../../core/placement/places"
import type { Tools } from "../../tools"
import { pieces } from "./pieces"

/** A section after a preposition: "hinter Folie 3", "von dem ausgelassenen Haar". */
export const inDative = (t: Tools, code: SectionNameCode) => {
  if ("number" in code) return pieces(t).names([code.number], code.code)
  return code.name ? `„${code.name}“` : "dem ausgelassenen Haar"
}

/** Where a landmark is, within a sentence: "an der linken Schläfe". */
export const atLandmark = ({ landmark, side }: LandmarkCode) =>
  side === "centre" ? at[landmark].either : at[landmark][side]

const at: Record<LandmarkName, { left: string; right: string; either: string }> = {
  "centre front": {
    left: "an der Stirnmitte links",
    right: "an der Stirnmitte rechts",
    either: "an der Stirnmitte",
  },
  recession: {
    left: "an der linken Stirnecke",
    right: "an der rechten Stirnecke",
    either: "an der Stirnecke",
  },
  temple: { left: "an der linken Schläfe", right: "an der rechten Schläfe", either: "an der Schläfe" },
  sideburn: {
    left: "an der linken Kotelette",
    right: "an der rechten Kotelette",
    either: "an der Kotelette",
  },
  "ear top": { left: "oben am linken Ohr", right: "oben am rechten Ohr", either: "oben am Ohr" },
  "behind ear": {
    left: "hinter dem linken Ohr",
    right: "hinter dem rechten Ohr",
    either: "hinter dem Ohr",
  },
  "nape corner": {
    left: "an der linken Nackenecke",
    right: "an der rechten Nackenecke",
    either: "an der Nackenecke",
  },
  "centre nape": {
    left: "an der Nackenmitte links",
    right: "an der Nackenmitte rechts",
    either: "an der Nackenmitte",
  },
}
