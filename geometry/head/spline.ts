import { type SurfacePoint, surfacePoint } from "../frames"
import { mapDistance } from "../surfacePath"

/**
 * A smooth line through every control point, in the scalp map: the centripetal Catmull-Rom spline, which makes
 * no loop or cusp between them (Yuksel, Schaefer, Keyser 2011). The first and last control only steer.
 */
export function splineThrough(controls: readonly SurfacePoint[], piecesEach: number): SurfacePoint[] {
  const line: SurfacePoint[] = []
  for (let i = 1; i < controls.length - 2; i++) {
    const span = controls.slice(i - 1, i + 3)
    for (let piece = 0; piece < piecesEach; piece++) line.push(onSpan(span, piece / piecesEach))
  }
  line.push(controls[controls.length - 2])
  return line
}

/** Barry and Goldman's pyramid: three blends, two blends, one. */
function onSpan([a, b, c, d]: readonly SurfacePoint[], share: number): SurfacePoint {
  const knotB = Math.sqrt(mapDistance(a, b))
  const knotC = knotB + Math.sqrt(mapDistance(b, c))
  const knotD = knotC + Math.sqrt(mapDistance(c, d))
  const at = knotB + (knotC - knotB) * share
  const left = blend(blend(a, b, at / knotB), blend(b, c, (at - knotB) / (knotC - knotB)), at / knotC)
  const rightNear = blend(b, c, (at - knotB) / (knotC - knotB))
  const rightFar = blend(c, d, (at - knotC) / (knotD - knotC))
  const right = blend(rightNear, rightFar, (at - knotB) / (knotD - knotB))
  return blend(left, right, (at - knotB) / (knotC - knotB))
}

const blend = (p: SurfacePoint, q: SurfacePoint, share: number) =>
  surfacePoint(p[0] + (q[0] - p[0]) * share, p[1] + (q[1] - p[1]) * share)
