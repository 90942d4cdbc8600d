import { type SurfacePoint, surfacePoint } from "../surface/frames"
import { smoothStep } from "../surface/smoothStep"
import { mapDistance } from "../surface/surfacePath"
import { headSides, type LandmarkedHairline } from "./hairline"
import { landmarkNames } from "./hairlineLandmarks"

/** How far inside the hairline a place goes all the way with it, and from where on it stays, radians of the map. */
const [withIt, stays] = [0.15, 0.9]
/** What would go less than this, radians of the map (a thousandth of a millimetre), stays. */
const leastShift = 1e-5
/** Between two landmarks the hairline is looked at so many times. */
const looks = 8

/** A place of the hairline before, and how far it has gone in the map. */
type Gone = { from: SurfacePoint; du: number; dv: number }

/** What is followed of a hairline. */
type Followed = Pick<LandmarkedHairline, "sides" | "pointAlong" | "contains">

/**
 * Where places of the scalp map lie once landmarks of the hairline have been moved: each goes along with the stretch
 * of the hairline next to it, the less the farther inside it lies, and far inside it stays. Smooth all over the scalp.
 */
export function followMoves(from: Followed, to: Followed): (at: SurfacePoint) => SurfacePoint {
  const after = placesOf(to)
  const gone = placesOf(from).map((at, i): Gone => {
    const now = after[i]
    return { from: at, du: now[0] - at[0], dv: now[1] - at[1] }
  })
  return (at) => {
    const { du, dv, nearest } = goneNear(gone, at)
    const share = from.contains(at) ? smoothStep(stays, withIt, nearest) : 1
    const [u, v] = [share * du, share * dv]
    return Math.hypot(u, v) < leastShift ? at : surfacePoint(at[0] + u, at[1] + v)
  }
}

/** Places of a hairline counted by its landmarks, so that they are the same ones on another. */
function placesOf({ sides, pointAlong }: Followed): SurfacePoint[] {
  return headSides.flatMap((side) => {
    const along = landmarkNames.map((name) => sides[side].landmarkAlongMm(name))
    return landmarkNames.slice(1).flatMap((_, i) =>
      Array.from({ length: looks }, (_, k) => {
        const mm = along[i] + ((along[i + 1] - along[i]) * (k + 0.5)) / looks
        return pointAlong(side === "left" ? -mm : mm)
      }),
    )
  })
}

/** The mean of what has gone, weighed by nearness (Shepard 1968, power 4), and the way to the nearest of it. */
function goneNear(gone: readonly Gone[], at: SurfacePoint) {
  let [du, dv, weights, nearest] = [0, 0, 0, Infinity]
  for (const each of gone) {
    const way = mapDistance(each.from, at)
    const weight = 1 / (way ** 4 + 1e-9)
    du += weight * each.du
    dv += weight * each.dv
    weights += weight
    nearest = Math.min(nearest, way)
  }
  return { du: du / weights, dv: dv / weights, nearest }
}
