import { type SurfacePoint, surfacePoint } from "../surface/frames"
import { smoothStep } from "../surface/smoothStep"
import type { LandmarkedHairline } from "./hairline"

/** How far inside the hairline a place goes all the way with it, and from where on it stays, radians of the map. */
const [withIt, stays] = [0.35, 1.2]

/**
 * Where a place of the scalp map lies once the hairline meets the forehead another way: it moves toward the crown or
 * away from it as the hairline in front of it does, the less the farther inside it lies. Behind the temples, where all
 * forms are one, it stays.
 */
export function followHairline(
  from: LandmarkedHairline,
  to: LandmarkedHairline,
  at: SurfacePoint,
): SurfacePoint {
  const turn = Math.abs(turnOf(at))
  const fromRadius = reachAt(from, turn)
  const toRadius = reachAt(to, turn)
  if (fromRadius === null || toRadius === null) return at
  const radius = Math.hypot(...at)
  const share = smoothStep(stays, withIt, fromRadius - radius)
  const ratio = 1 + (share * (toRadius - fromRadius)) / radius
  return share === 0 ? at : surfacePoint(at[0] * ratio, at[1] * ratio)
}

/** The direction of a place seen from the crown, radians from the front, positive to the head's right. */
const turnOf = ([u, v]: SurfacePoint) => Math.atan2(u, v)

/** How far from the crown the hairline runs in a direction of the right side, radians; null behind the temple. */
function reachAt({ landmarks, coordinates, pointAlong }: LandmarkedHairline, turn: number): number | null {
  const temple = landmarks.get("temple")
  if (!temple || turn >= turnOf(temple)) return null
  let [low, high] = [0, coordinates(temple).alongMm]
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2
    if (turnOf(pointAlong(middle)) < turn) low = middle
    else high = middle
  }
  return Math.hypot(...pointAlong(low))
}
