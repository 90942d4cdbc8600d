import { type HeadSide, headSides, type LandmarkedHairline } from "./hairline"
import type { LandmarkName } from "./hairlineLandmarks"

export type SidedLandmark = { name: LandmarkName; side: HeadSide }

/** The landmark that lies nearest to a place so far along the hairline, mm, among those of the side the place is on. */
export function nearestLandmark({ sides }: LandmarkedHairline, alongMm: number): SidedLandmark | null {
  const side = headSides[alongMm < 0 ? 0 : 1]
  const { landmarks, landmarkAlongMm } = sides[side]
  let nearest: LandmarkName | null = null
  let least = Infinity
  for (const name of landmarks.keys()) {
    const apart = Math.abs(landmarkAlongMm(name) - Math.abs(alongMm))
    if (apart < least) [nearest, least] = [name, apart]
  }
  return nearest && { name: nearest, side }
}
