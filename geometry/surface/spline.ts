import { type SurfacePoint, surfacePoint } from "./frames"
import { between, mapDistance, type SurfacePath } from "./surfacePath"

/**
 * A smooth line through every control point, in the scalp map: the centripetal Catmull-Rom spline, which makes
 * no loop or cusp between them (Yuksel, Schaefer, Keyser 2011). The first and last control only steer.
 */
export function splineThrough(controls: SurfacePath, piecesEach: number): SurfacePath {
  const line: SurfacePoint[] = []
  for (let i = 1; i < controls.length - 2; i++) {
    const span = controls.slice(i - 1, i + 3)
    for (let piece = 0; piece < piecesEach; piece++) line.push(onSpan(span, piece / piecesEach))
  }
  line.push(controls[controls.length - 2])
  return line
}

/** A smooth line through all points of a path, going on at its ends as round as it came. */
export function smoothLine(path: SurfacePath, piecesEach: number): SurfacePath {
  const points = withoutRepeats(path)
  return points.length < 3 ? points : splineThrough(steered(points), piecesEach)
}

/** A stretch of a spline as a cubic of the share along it, from 0 to 1: the factors of its powers, for u and for v. */
export type Cubic = { u: Powers; v: Powers }
type Powers = readonly [number, number, number, number]

/** The same smooth line as its stretches, one from each point to the next. */
export function smoothCubics(path: SurfacePath): Cubic[] {
  const points = withoutRepeats(path)
  if (points.length < 3) return points.slice(1).map((to, i) => straight(points[i], to))
  const controls = steered(points)
  return points.slice(1).map((_, i) => cubicOn(controls.slice(i, i + 4)))
}

const withoutRepeats = (path: SurfacePath) =>
  path.filter((at, i) => i === 0 || mapDistance(at, path[i - 1]) > 1e-9)

/** Points of a line between the two that steer its ends. */
function steered(points: SurfacePath): SurfacePath {
  const last = points.length - 1
  const before = continued(points[2], points[1], points[0])
  const after = continued(points[last - 2], points[last - 1], points[last])
  return [before, ...points, after]
}

const straight = (from: SurfacePoint, to: SurfacePoint): Cubic => ({
  u: [from[0], to[0] - from[0], 0, 0],
  v: [from[1], to[1] - from[1], 0, 0],
})

/** The middle one of three spans, from its ends and its slopes there. */
function cubicOn([a, b, c, d]: SurfacePath): Cubic {
  const [before, here, after] = [mapDistance(a, b), mapDistance(b, c), mapDistance(c, d)].map(Math.sqrt)
  const powers = (axis: 0 | 1): Powers => {
    const rise = c[axis] - b[axis]
    const slopeB = rise + here * ((b[axis] - a[axis]) / before - (c[axis] - a[axis]) / (before + here))
    const slopeC = rise + here * ((d[axis] - c[axis]) / after - (d[axis] - b[axis]) / (here + after))
    return [b[axis], slopeB, 3 * rise - 2 * slopeB - slopeC, slopeB + slopeC - 2 * rise]
  }
  return { u: powers(0), v: powers(1) }
}

/** The fourth corner that makes three points an even-sided figure: the first mirrored in the line between the others. */
function continued(first: SurfacePoint, second: SurfacePoint, third: SurfacePoint): SurfacePoint {
  const [du, dv] = [third[0] - second[0], third[1] - second[1]]
  const [eu, ev] = [first[0] - (second[0] + third[0]) / 2, first[1] - (second[1] + third[1]) / 2]
  const twice = (2 * (du * eu + dv * ev)) / (du * du + dv * dv)
  return surfacePoint(first[0] - twice * du, first[1] - twice * dv)
}

/** Barry and Goldman's pyramid: three blends, two blends, one. */
function onSpan([a, b, c, d]: SurfacePath, share: number): SurfacePoint {
  const knotB = Math.sqrt(mapDistance(a, b))
  const knotC = knotB + Math.sqrt(mapDistance(b, c))
  const knotD = knotC + Math.sqrt(mapDistance(c, d))
  const at = knotB + (knotC - knotB) * share
  const near = between(b, c, share)
  const left = between(between(a, b, at / knotB), near, at / knotC)
  const right = between(near, between(c, d, (at - knotC) / (knotD - knotC)), (at - knotB) / (knotD - knotB))
  return between(left, right, share)
}
