import { type SurfacePoint, surfacePoint } from "../surface/frames"
import { contains } from "../surface/surfacePatch"
import { mapDistance } from "../surface/surfacePath"
import type { DividedArea } from "./workingSections"

/** A place inside an area and how far it stays from its outline, radians of the scalp map. */
export type InnerPlace = { at: SurfacePoint; clear: number }

const columns = 13

const remembered = new WeakMap<DividedArea, readonly InnerPlace[]>()

/** Places spread evenly over an area, the one farthest from its outline first; remembered with the area. */
export function innerPlaces(area: DividedArea): readonly InnerPlace[] {
  const known = remembered.get(area) ?? spreadOver(area)
  remembered.set(area, known)
  return known
}

function spreadOver({ ring, low, high }: DividedArea): InnerPlace[] {
  const step = Math.max(high[0] - low[0], high[1] - low[1]) / columns
  const places: InnerPlace[] = []
  for (let u = low[0] + step / 2; u < high[0]; u += step)
    for (let v = low[1] + step / 2; v < high[1]; v += step) {
      const at = surfacePoint(u, v)
      if (contains(ring, at))
        places.push({ at, clear: Math.min(...ring.map((edge) => mapDistance(edge, at))) })
    }
  return places.length > 0 ? places.sort((a, b) => b.clear - a.clear) : [{ at: ring[0], clear: 0 }]
}
