import type { Pair } from "./frames"

/** The convex hull of points of a plane, the same objects, anticlockwise from the leftmost (Andrew's monotone chain, 1979). */
export function convexHull(points: readonly Pair[]): Pair[] {
  const sorted = [...points].sort(([ax, ay], [bx, by]) => ax - bx || ay - by)
  return [...chain(sorted), ...chain(sorted.reverse())]
}

/** One side of the hull, without its last point, which begins the other side. */
function chain(sorted: readonly Pair[]): Pair[] {
  const kept: Pair[] = []
  for (const point of sorted) {
    while (kept.length > 1 && !turnsLeft(kept[kept.length - 2], kept[kept.length - 1], point)) kept.pop()
    kept.push(point)
  }
  return kept.slice(0, -1)
}

const turnsLeft = ([ax, ay]: Pair, [bx, by]: Pair, [cx, cy]: Pair) =>
  (bx - ax) * (cy - ay) - (by - ay) * (cx - ax) > 0
