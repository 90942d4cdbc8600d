import type { Surface } from "./surface"
import { measurePath, pointAlong, type SurfacePath, slopeAlong } from "./surfacePath"
import { walk } from "./surfaceWalk"
import { add, normalize, scale } from "./vec3"

/** Points added to a path stand this far apart, mm. */
const spacingMm = 4

/** A path made longer, straight on over the surface: so many mm before its first point and past its last. */
export const extendPath = (
  surface: Surface,
  path: SurfacePath,
  beforeMm: number,
  pastMm: number,
): SurfacePath => [
  ...beyond(surface, path.toReversed(), beforeMm).toReversed(),
  ...path,
  ...beyond(surface, path, pastMm),
]

/** Places straight on from the end of a path, the last of them `mm` from it. */
function beyond(surface: Surface, path: SurfacePath, mm: number): SurfacePath {
  if (mm <= 0) return []
  const measured = measurePath(surface, path)
  const at = path[path.length - 1]
  const [du, dv] = slopeAlong(measured, measured.lengthMm)
  const [u, v] = surface.tangentsAt(at)
  const start = { at, heading: normalize(add(scale(u, du), scale(v, dv))) }
  const steps = Math.max(1, Math.ceil(mm / spacingMm))
  return Array.from({ length: steps }, (_, i) => walk(surface, start, (mm * (i + 1)) / steps).at)
}

/** The part of a path between two places along it, mm, its inner points kept. */
export function cutPath(surface: Surface, path: SurfacePath, fromMm: number, toMm: number): SurfacePath {
  const measured = measurePath(surface, path)
  const inner = measured.points.filter((_, i) => measured.runMm[i] > fromMm && measured.runMm[i] < toMm)
  return [pointAlong(measured, fromMm), ...inner, pointAlong(measured, toMm)]
}
