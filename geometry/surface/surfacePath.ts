import { mirrored, type Pair, type SurfacePoint, surfacePoint } from "./frames"
import type { Surface } from "./surface"
import { headingLeft } from "./surfaceWalk"
import { distance } from "./vec3"

/** A line that hugs the surface: straight in the scalp map from each point to the next. */
export type SurfacePath = readonly SurfacePoint[]

/** A path cut so finely that chord and arc agree, with the mm walked at each of its points. */
export type MeasuredPath = { points: SurfacePath; runMm: readonly number[]; lengthMm: number }

/** Longest piece of a measured path, radians of the map: about 2.5 mm, where a chord is 0.005 % short. */
const pieceRadians = 0.03

/** Cut a path into short pieces and sum their chords, mm on the surface. */
export function measurePath(surface: Surface, path: SurfacePath): MeasuredPath {
  const points = subdivide(path)
  const runMm = [0]
  let previous = surface.pointAt(points[0])
  for (let i = 1; i < points.length; i++) {
    const next = surface.pointAt(points[i])
    runMm.push(runMm[i - 1] + distance(previous, next))
    previous = next
  }
  return { points, runMm, lengthMm: runMm[runMm.length - 1] }
}

/** Length of a path on the surface, mm. */
export const lengthMm = (surface: Surface, path: SurfacePath) => measurePath(surface, path).lengthMm

/** The point of a path after so many mm; the nearest end when the path is too short. */
export function pointAlong({ points, runMm }: MeasuredPath, alongMm: number): SurfacePoint {
  const last = runMm.length - 1
  if (alongMm <= 0) return points[0]
  if (alongMm >= runMm[last]) return points[last]
  let [low, high] = [0, last]
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if (runMm[middle] <= alongMm) low = middle
    else high = middle
  }
  return between(points[low], points[high], (alongMm - runMm[low]) / (runMm[high] - runMm[low]))
}

/** Reach of a slope to either side, mm: past the corners between the short pieces of a smooth line. */
const slopeMm = 1.5

/** The direction of a path in the scalp map after so many mm, of no particular length: the slope of the parabola through three places. */
export function slopeAlong(measured: MeasuredPath, alongMm: number): Pair {
  const reach = Math.min(slopeMm, measured.lengthMm / 2)
  const middleMm = Math.max(reach, Math.min(measured.lengthMm - reach, alongMm))
  const [before, middle, after] = [-reach, 0, reach].map((step) => pointAlong(measured, middleMm + step))
  const offMiddle = (alongMm - middleMm) / reach
  const slope = (axis: 0 | 1) =>
    (after[axis] - before[axis]) / 2 + offMiddle * (after[axis] - 2 * middle[axis] + before[axis])
  return [slope(0), slope(1)]
}

/** The same path as `count` points at equal distances on the surface, its ends kept. */
export function resample(surface: Surface, path: SurfacePath, count: number): SurfacePath {
  return resampleMeasured(measurePath(surface, path), count)
}

/** A measured path as `count` points at equal distances on the surface, its ends kept. */
export function resampleMeasured(measured: MeasuredPath, count: number): SurfacePath {
  const step = measured.lengthMm / (count - 1)
  const first = measured.points[0]
  const last = measured.points[measured.points.length - 1]
  return Array.from({ length: count }, (_, i) =>
    i === 0 ? first : i === count - 1 ? last : pointAlong(measured, i * step),
  )
}

/** Each inner point drawn toward the middle of its neighbours, `passes` times; the ends stay. */
export function smooth(path: SurfacePath, passes: number): SurfacePath {
  let points = path
  for (let pass = 0; pass < passes; pass++) points = points.map(relax)
  return points
}

/** The unit vector square to a path at its point `index`, to the left seen from outside. */
export function leftOf(surface: Surface, path: SurfacePath, index: number) {
  const before = path[Math.max(0, index - 1)]
  const after = path[Math.min(path.length - 1, index + 1)]
  return headingLeft(surface, path[index], after[0] - before[0], after[1] - before[1])
}

/** The same path on the other side of the head. */
export const mirror = (path: SurfacePath): SurfacePath => path.map(mirrored)

/** The map point a share of the way from one to another. */
export const between = (from: SurfacePoint, to: SurfacePoint, share: number) =>
  surfacePoint(from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share)

/** Distance of two places in the scalp map, radians. */
export const mapDistance = (a: SurfacePoint, b: SurfacePoint) =>
  Math.sqrt((a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2)

function subdivide(path: SurfacePath): SurfacePath {
  const points = [path[0]]
  for (let i = 1; i < path.length; i++) {
    const pieces = Math.max(1, Math.ceil(mapDistance(path[i - 1], path[i]) / pieceRadians))
    for (let piece = 1; piece < pieces; piece++) points.push(between(path[i - 1], path[i], piece / pieces))
    points.push(path[i])
  }
  return points
}

function relax(point: SurfacePoint, index: number, path: SurfacePath): SurfacePoint {
  if (index === 0 || index === path.length - 1) return point
  return between(point, between(path[index - 1], path[index + 1], 0.5), 0.5)
}
