import type { Pair } from "./frames"

/** A smooth line through every point (uniform Catmull-Rom spline, ends doubled), with points about `stepMm` apart. */
export function smoothThrough(points: readonly Pair[], stepMm: number): Pair[] {
  const line: Pair[] = []
  for (let i = 0; i + 1 < points.length; i++) {
    const span = [
      points[Math.max(0, i - 1)],
      points[i],
      points[i + 1],
      points[Math.min(points.length - 1, i + 2)],
    ]
    const pieces = Math.max(
      1,
      Math.round(Math.hypot(span[2][0] - span[1][0], span[2][1] - span[1][1]) / stepMm),
    )
    for (let k = 0; k < pieces; k++) line.push([onSpan(span, 0, k / pieces), onSpan(span, 1, k / pieces)])
  }
  line.push(points[points.length - 1])
  return line
}

function onSpan([before, from, to, after]: readonly Pair[], axis: 0 | 1, t: number) {
  const [a, b, c, d] = [before[axis], from[axis], to[axis], after[axis]]
  return b + 0.5 * t * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)))
}
