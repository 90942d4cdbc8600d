import { type SurfacePoint, surfacePoint } from "../surface/frames"
import { smoothLine } from "../surface/spline"
import type { Surface } from "../surface/surface"
import { mapDistance, type SurfacePath } from "../surface/surfacePath"
import { add, length, scale } from "../surface/vec3"

/** A dividing parting that stops so near the next edge, mm, goes straight on to it. */
export const reachMm = 25

const piecesEach = 2
/** The way a line ends is looked at over its last radians of the map, past the tremor of a hand. */
const endRadians = 0.1

const remembered = new WeakMap<Surface, WeakMap<SurfacePath, SurfacePath>>()

/**
 * A dividing parting as the smooth line through its points, gone straight on at both ends by `reachMm`, in the scalp
 * map; the same object for as long as surface and parting live.
 */
export function dividingLine(surface: Surface, parting: SurfacePath): SurfacePath {
  const onSurface = remembered.get(surface) ?? new WeakMap<SurfacePath, SurfacePath>()
  remembered.set(surface, onSurface)
  const known = onSurface.get(parting)
  if (known) return known
  const line = smoothLine(parting, piecesEach)
  const longer = [onFrom(surface, line), ...line, onFrom(surface, line.toReversed())]
  onSurface.set(parting, longer)
  return longer
}

/** The place `reachMm` before the first point of a line, straight on the way it comes from. */
function onFrom(surface: Surface, line: SurfacePath): SurfacePoint {
  const [end] = line
  const inner = line.find((at) => mapDistance(at, end) >= endRadians) ?? line[line.length - 1]
  const [du, dv] = [end[0] - inner[0], end[1] - inner[1]]
  const [along, across] = surface.tangentsAt(end)
  const stepMm = length(add(scale(along, du), scale(across, dv)))
  const share = stepMm > 0 ? reachMm / stepMm : 0
  return surfacePoint(end[0] + du * share, end[1] + dv * share)
}
