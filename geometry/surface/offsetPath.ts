import { clipPath } from "./clipPath"
import { cutLoops } from "./cutLoops"
import type { SurfacePoint } from "./frames"
import { nearestOnPath } from "./nearestOnPath"
import type { Surface } from "./surface"
import { between, leftOf, measurePath, type SurfacePath } from "./surfacePath"
import { headingLeft, type Walker, walk } from "./surfaceWalk"
import type { Vec3 } from "./vec3"

/** How much nearer to the path than asked an offset point may lie: arc against chord, and a little more. */
const arcAgainstChord = 0.03
const slackMm = 0.2

/**
 * The path `offsetMm` to its left on the surface, seen from outside in the direction of travel; negative to its
 * right. Inside a bend tighter than the offset the loop is cut off: what came too near to the path is left out, from
 * the very place where it did, so that a path that bends a little otherwise has an offset a little elsewhere. The
 * path may be a part of a longer line that the offset must not come near to either: `distanceMm` is the way to it.
 */
export function offsetPath(
  surface: Surface,
  path: SurfacePath,
  offsetMm: number,
  distanceMm: (point: Vec3) => number = distanceTo(surface, path),
): SurfacePath {
  const leastMm = Math.abs(offsetMm) * (1 - arcAgainstChord) - slackMm
  const offsetAt = (index: number) => walk(surface, walkerAt(surface, path, index), offsetMm).at
  const isClear = (at: SurfacePoint) => distanceMm(surface.pointAt(at)) >= leastMm
  return cutLoops(clipPath(path.length, offsetAt, isClear))
}

function distanceTo(surface: Surface, path: SurfacePath): (point: Vec3) => number {
  const nearest = nearestOnPath(surface, measurePath(surface, path))
  return (point) => nearest(point).chordMm
}

/** A walker on a path, between two of its points as well, who looks square to it. */
function walkerAt(surface: Surface, path: SurfacePath, index: number): Walker {
  const before = Math.min(Math.floor(index), path.length - 1)
  const share = index - before
  if (share === 0) return { at: path[before], heading: leftOf(surface, path, before) }
  const at = between(path[before], path[before + 1], share)
  const [from, to] = [before, before + 1].map((i) => [
    path[Math.max(0, i - 1)],
    path[Math.min(path.length - 1, i + 1)],
  ])
  const slope = (axis: 0 | 1) =>
    (1 - share) * (from[1][axis] - from[0][axis]) + share * (to[1][axis] - to[0][axis])
  return { at, heading: headingLeft(surface, at, slope(0), slope(1)) }
}
