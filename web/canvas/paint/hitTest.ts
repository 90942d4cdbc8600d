import type { ViewPoint } from "../../../geometry/surface/frames"
import type { Plan } from "../../core/document/schema"
import { bandRing, type Scene } from "../../drawing/marks"

/** The section under a point of the page, the one applied last first; `reachMm` widens thin bands for a finger. */
export function sectionAt(plan: Plan, scene: Scene, at: ViewPoint, reachMm: number): string | null {
  let nearest: { id: string; distanceMm: number } | null = null
  for (const section of plan.sections) {
    const distanceMm = Math.min(
      ...bandRing(section, plan, scene).map((ring) => distanceToRing(ring, at)),
      Infinity,
    )
    if (distanceMm <= reachMm && (!nearest || distanceMm <= nearest.distanceMm))
      nearest = { id: section.id, distanceMm }
  }
  return nearest?.id ?? null
}

function distanceToRing(ring: readonly ViewPoint[], at: ViewPoint) {
  let inside = false
  let closest = Infinity
  for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
    const [a, b] = [ring[j], ring[i]]
    if (a[1] > at[1] !== b[1] > at[1] && at[0] < ((b[0] - a[0]) * (at[1] - a[1])) / (b[1] - a[1]) + a[0])
      inside = !inside
    closest = Math.min(closest, distanceToSegment(at, a, b))
  }
  return inside ? 0 : closest
}

/** Distance from a point of the page to a straight piece, mm. */
export function distanceToSegment(at: ViewPoint, a: ViewPoint, b: ViewPoint) {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]]
  const lengthSquared = dx * dx + dy * dy
  const along = lengthSquared > 0 ? ((at[0] - a[0]) * dx + (at[1] - a[1]) * dy) / lengthSquared : 0
  const t = Math.max(0, Math.min(1, along))
  return Math.hypot(at[0] - a[0] - t * dx, at[1] - a[1] - t * dy)
}
