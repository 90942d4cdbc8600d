import type { Surface } from "./head/surface"
import { nearestOnPath } from "./nearestOnPath"
import { leftOf, measurePath, type SurfacePath } from "./surfacePath"
import { walk } from "./surfaceWalk"

/** How much nearer to the path than asked an offset point may lie: arc against chord, and a little more. */
const arcAgainstChord = 0.03
const slackMm = 0.2

/**
 * The path `offsetMm` to its left on the surface, seen from outside in the direction of travel; negative to its
 * right. Inside a bend tighter than the offset the loop is cut off: what came too near to the path is left out. The
 * path may be a part of a longer line, `clearOf`, that the offset must not come near to either.
 */
export function offsetPath(
  surface: Surface,
  path: SurfacePath,
  offsetMm: number,
  clearOf: SurfacePath = path,
): SurfacePath {
  const nearest = nearestOnPath(surface, measurePath(surface, clearOf))
  const leastMm = Math.abs(offsetMm) * (1 - arcAgainstChord) - slackMm
  return path
    .map((at, i) => walk(surface, { at, heading: leftOf(surface, path, i) }, offsetMm).at)
    .filter((at) => nearest(surface.pointAt(at)).chordMm >= leastMm)
}
