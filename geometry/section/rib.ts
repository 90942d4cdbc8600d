import type { Hairline } from "../scalp/hairline"
import type { Head } from "../scalp/head"
import { shareInside } from "../scalp/longestRunInside"
import type { SurfacePoint } from "../surface/frames"
import type { Surface } from "../surface/surface"
import { between } from "../surface/surfacePath"
import { type Walker, walk } from "../surface/surfaceWalk"

/**
 * A line across a band, square to the parting: its points at even steps, and how deep it goes, mm. Where it crosses bare
 * skin on its way, a temple or an ear, the stretches of it that do, as shares of its steps from the parting, and how long they are.
 */
export type Rib = {
  depthMm: number
  points: readonly SurfacePoint[]
  gaps: readonly Gap[] | null
  gapMm: number
}
export type Gap = { from: number; to: number }

/** How deep a rib is to go, mm, of how many points it is, and whether it is known to meet no hairline. */
export type RibWanted = { depthMm: number; count: number; isClear: boolean }

/** Looks at each step of a rib, so that a narrow strip of bare skin or of hair is not stepped over. */
const looks = 4

/**
 * Walk a rib of so many points from its foot. The band is all the hair as far as it goes: a rib ends at the last hair
 * within its depth, where it is walked again to end on the hairline, and not at the first bare skin it meets.
 */
export function growRib(head: Head, foot: Walker, { depthMm, count, isClear }: RibWanted): Rib {
  const points = walkRib(head.surface, foot, depthMm, count)
  if (isClear) return { depthMm, points, gaps: null, gapMm: 0 }
  const isIn = looksAlong(head.hairline, points)
  const last = isIn.lastIndexOf(true)
  if (last === isIn.length - 1) return { depthMm, points, ...gapsOf(head.hairline, points, isIn, depthMm) }
  const stepMm = depthMm / (count - 1)
  const reachMm = stepMm * (last / looks) + reachInside(head, foot, points, last, stepMm)
  const cut = walkRib(head.surface, foot, reachMm, count)
  const isCutIn = looksAlong(head.hairline, cut)
  isCutIn[isCutIn.length - 1] = true
  return { depthMm: reachMm, points: cut, ...gapsOf(head.hairline, cut, isCutIn, reachMm) }
}

function walkRib(surface: Surface, foot: Walker, depthMm: number, count: number): SurfacePoint[] {
  const points = [foot.at]
  let walker = foot
  for (let i = 1; i < count; i++) {
    walker = walk(surface, walker, depthMm / (count - 1))
    points.push(walker.at)
  }
  return points
}

/** The place so many looks from the foot, straight in the map from point to point. */
const placeOf = (points: readonly SurfacePoint[], look: number): SurfacePoint => {
  const step = Math.min(points.length - 2, Math.floor(look / looks))
  return between(points[step], points[step + 1], look / looks - step)
}

/** Whether each look falls on hair; the foot does. */
function looksAlong({ contains }: Hairline, points: readonly SurfacePoint[]): boolean[] {
  const isIn = [true]
  for (let look = 1; look <= looks * (points.length - 1); look++) isIn.push(contains(placeOf(points, look)))
  return isIn
}

function gapsOf(
  hairline: Hairline,
  points: readonly SurfacePoint[],
  isIn: readonly boolean[],
  depthMm: number,
) {
  if (isIn.every(Boolean)) return { gaps: null, gapMm: 0 }
  const gaps: Gap[] = []
  const met = (inside: number, outside: number) => {
    const share = shareInside(hairline, placeOf(points, inside), placeOf(points, outside))
    return (inside + (outside - inside) * share) / looks
  }
  let from = 0
  for (let look = 1; look < isIn.length; look++) {
    if (isIn[look - 1] && !isIn[look]) from = met(look - 1, look)
    if (!isIn[look - 1] && isIn[look]) gaps.push({ from, to: met(look, look - 1) })
  }
  const steps = gaps.reduce((sum, gap) => sum + gap.to - gap.from, 0)
  return { gaps, gapMm: (depthMm * steps) / (points.length - 1) }
}

/** How far past its last look on hair a rib is still on hair, mm: by the map's straight line, then once more from there. */
function reachInside(
  { surface, hairline }: Head,
  foot: Walker,
  points: readonly SurfacePoint[],
  last: number,
  stepMm: number,
): number {
  const lookMm = stepMm / looks
  const from = placeOf(points, last)
  const share = shareInside(hairline, from, placeOf(points, last + 1))
  const near = walk(surface, foot, lookMm * (last + share)).at
  return hairline.contains(near)
    ? lookMm * (share + (1 - share) * shareInside(hairline, near, placeOf(points, last + 1)))
    : lookMm * share * shareInside(hairline, from, near)
}
