import type { SurfacePoint } from "./frames"
import type { SurfacePath } from "./surfacePath"

type PlaceAt = (index: number) => SurfacePoint
type IsKept = (at: SurfacePoint, index: number) => boolean

/** How closely the end of a run is found, as halvings of a step. */
const halvings = 8
/**
 * A line through the places at 0, 1, 2 and so on that are kept, each run of them from and to the very place, between
 * the whole numbers, where it begins and ends. What is left out inside is bridged. When the places move a little, so
 * does the line.
 */
export function clipPath(count: number, placeAt: PlaceAt, isKept: IsKept): SurfacePath {
  const line: SurfacePoint[] = []
  let wasKept = false
  for (let i = 0; i < count; i++) {
    const at = placeAt(i)
    const kept = isKept(at, i)
    if (i > 0 && kept !== wasKept)
      line.push(kept ? lastKept(i, i - 1, placeAt, isKept) : lastKept(i - 1, i, placeAt, isKept))
    if (kept) line.push(at)
    wasKept = kept
  }
  return line
}

function lastKept(kept: number, left: number, placeAt: PlaceAt, isKept: IsKept): SurfacePoint {
  for (let i = 0; i < halvings; i++) {
    const middle = (kept + left) / 2
    if (isKept(placeAt(middle), middle)) kept = middle
    else left = middle
  }
  return placeAt(kept)
}
