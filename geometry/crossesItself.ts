import type { SurfacePoint } from "./frames"
import type { SurfacePath } from "./surfacePath"

/** Whether two pieces of a line that are not neighbours meet, in the scalp map. */
export function crossesItself(path: SurfacePath): boolean {
  for (let i = 1; i < path.length; i++)
    for (let j = i + 2; j < path.length; j++)
      if (cross(path[i - 1], path[i], path[j - 1], path[j])) return true
  return false
}

const cross = (a: SurfacePoint, b: SurfacePoint, c: SurfacePoint, d: SurfacePoint) =>
  turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0

/** Twice the area of a triangle; positive when it is walked to the left. */
const turn = (a: SurfacePoint, b: SurfacePoint, c: SurfacePoint) =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])
