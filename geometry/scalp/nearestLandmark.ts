import { type HeadSide, headSides, type LandmarkedHairline } from "./hairline"
import type { LandmarkName } from "./hairlineLandmarks"

export type SidedLandmark = { name: LandmarkName; side: HeadSide }

/** The landmark that lies nearest to a place so far along the hairline, mm, among those of the side the place is on. */
export function nearestLandmark({ sides }: LandmarkedHairline, alongMm: number): SidedLandmark {
  const side = headSides[alongMm < 0 ? 0 : 1]
  const { landmarks, landmarkAlongMm } = sides[side]
  const apart = (name: LandmarkName) => Math.abs(landmarkAlongMm(name) - Math.abs(alongMm))
  const name = [...landmarks.keys()].reduce((nearest, each) =>
    apart(each) < apart(nearest) ? each : nearest,
  )
  return { name, side }
}
