import { freehandParting, type Parted, straightParting } from "../parting/parting"
import { alongMm } from "../placing/technique"
import type { Head } from "../scalp/head"
import { type SurfacePoint, surfacePoint } from "../surface/frames"
import { smoothLine } from "../surface/spline"
import type { SurfacePath } from "../surface/surfacePath"

/**
 * A place told by the hairline, so that it is found on any head: a counted landmark (see Spot), and the share of the
 * way from there to the crown, 0 on the hairline and 1 on the crown.
 */
export type InwardSpot = { landmark: number; inward: number }

/** A dividing parting combed from spot to spot, straight with a corner at each, or in one curve. */
export type StartLine = { run: "straight" | "curved"; through: readonly InwardSpot[] }

/** The dividing parting on one head, or the reason why that head has no room for it. */
export function fitStartLine(head: Head, { run, through }: StartLine): Parted {
  const places = through.map((spot) => inwardPlace(head, spot))
  return run === "straight" ? legs(head, places) : freehandParting(head, smoothLine(places, 24))
}

/** The place of the scalp that a spot tells. The crown is the pole of the scalp map. */
export function inwardPlace(head: Head, { landmark, inward }: InwardSpot): SurfacePoint {
  const [u, v] = head.hairline.pointAlong(alongMm(head, landmark))
  return surfacePoint(u * (1 - inward), v * (1 - inward))
}

function legs(head: Head, places: SurfacePath): Parted {
  const path: SurfacePoint[] = []
  for (let i = 1; i < places.length; i++) {
    const leg = straightParting(head, places[i - 1], places[i])
    if ("refused" in leg) return leg
    path.push(...(i === 1 ? leg.parting : leg.parting.slice(1)))
  }
  return { parting: path }
}
