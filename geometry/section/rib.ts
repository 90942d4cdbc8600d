import type { Head } from "../scalp/head"
import { shareInside } from "../scalp/longestRunInside"
import type { SurfacePoint } from "../surface/frames"
import { type Walker, walk } from "../surface/surfaceWalk"

/** A line across a band, square to the parting: its points at even steps, and how deep it goes, mm. */
export type Rib = { depthMm: number; points: readonly SurfacePoint[] }

/** Walk a rib of so many points from its foot; where it leaves the hair it is walked again, to end on the hairline. */
export function growRib(head: Head, foot: Walker, depthMm: number, count: number): Rib {
  const rib = walkRib(head, foot, depthMm, count)
  const outside = rib.findIndex(({ at }, i) => i > 0 && !head.hairline.contains(at))
  if (outside < 0) return { depthMm, points: rib.map(({ at }) => at) }
  const stepMm = depthMm / (count - 1)
  const reachMm = stepMm * (outside - 1) + reachInside(head, rib[outside - 1], stepMm)
  return { depthMm: reachMm, points: walkRib(head, foot, reachMm, count).map(({ at }) => at) }
}

function walkRib({ surface }: Head, foot: Walker, depthMm: number, count: number): Walker[] {
  const rib = [foot]
  for (let i = 1; i < count; i++) rib.push(walk(surface, rib[i - 1], depthMm / (count - 1)))
  return rib
}

/** How much of a step that ends outside the hairline lies inside, mm: by the map's straight line, then once more from there. */
function reachInside({ surface, hairline }: Head, from: Walker, stepMm: number): number {
  const end = walk(surface, from, stepMm).at
  const share = shareInside(hairline, from.at, end)
  const near = walk(surface, from, stepMm * share).at
  return hairline.contains(near)
    ? stepMm * (share + (1 - share) * shareInside(hairline, near, end))
    : stepMm * share * shareInside(hairline, from.at, near)
}
