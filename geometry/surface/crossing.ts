import type { SurfacePoint } from "./frames"

/** How far along the piece from a to b of the scalp map it is met by the piece from c to d; null where they do not meet. */
export function shareOfCrossing(
  a: SurfacePoint,
  b: SurfacePoint,
  c: SurfacePoint,
  d: SurfacePoint,
): number | null {
  const [atA, atB] = [turn(c, d, a), turn(c, d, b)]
  if (atA * atB >= 0 || turn(a, b, c) * turn(a, b, d) >= 0) return null
  return atA / (atA - atB)
}

/** Twice the area of a triangle; positive when it is walked to the left. */
const turn = (a: SurfacePoint, b: SurfacePoint, c: SurfacePoint) =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])
