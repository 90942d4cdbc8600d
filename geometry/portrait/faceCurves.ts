import { acrossFace, type FaceCurve, onEachSide, pairs } from "./faceCurve"
import { browHairs, lashes } from "./faceHairs"

const lashLine = pairs([16, 4.6, 19.5, 2.4, 24, 0.6, 30, -0.4, 36, 0, 41, 1.7, 46, 5])
const lidFold = pairs([21, 13.6, 26, 15.6, 31.5, 16.2, 37, 15, 41.5, 12.4])
const wing = pairs([15.4, -16, 16.9, -19, 17, -22.8, 15.5, -26, 13, -27])
const nostril = pairs([11.5, -26.2, 9.2, -24.6, 6.4, -25, 4.4, -27])
const underNose = pairs([0, -28.6, 2, -28.3, 3.6, -27.4])
const mouth = pairs([0, -51.2, 4, -50.6, 9, -49.9, 15, -50.4, 20, -50.7, 24, -50.1])
const upperLip = pairs([0, -44.2, 2, -43.7, 4.6, -42.9, 8.5, -43.9, 14, -46.3, 19, -48.8, 22.3, -50])
const lowerLip = pairs([0, -60, 5, -59.7, 10, -58.2, 14.5, -55.8])
const jaw = pairs([14, -60, 24, -69, 36, -77.5, 47, -84])

/** The lines of a calm face with closed eyes, at the survey's landmarks, drawn by eye. */
export const faceCurves: readonly FaceCurve[] = [
  onEachSide({ part: "eye", weight: "bold" }, lashLine),
  onEachSide({ part: "eye", weight: "fine" }, lidFold),
  ...lashes(lashLine),
  ...browHairs(),
  onEachSide({ part: "nose", weight: "medium" }, wing),
  onEachSide({ part: "nose", weight: "fine" }, nostril),
  acrossFace({ part: "nose", weight: "fine" }, underNose),
  acrossFace({ part: "lips", weight: "medium" }, mouth),
  acrossFace({ part: "lips", weight: "fine" }, upperLip),
  acrossFace({ part: "lips", weight: "fine" }, lowerLip),
  { ...onEachSide({ part: "jaw", weight: "fine" }, jaw), seenFrom: "right" },
]
