import type { Hairline } from "../scalp/hairline"
import type { Head } from "../scalp/head"
import { shareInside } from "../scalp/longestRunInside"
import { type SurfacePoint, surfacePoint } from "../surface/frames"
import type { Surface } from "../surface/surface"
import { between } from "../surface/surfacePath"
import { type Moving, walkOn } from "../surface/surfaceWalk"

/**
 * A line across a band, square to the parting: its points at even steps, and how deep it goes, mm. Where it crosses bare
 * skin on its way, a temple or an ear, the stretches of it that do, as shares of its steps from the parting, and how long they are.
 */
export type Rib = {
  depthMm: number
  points: readonly SurfacePoint[]
  /** Of each point its place in space, mm, and the unit vector out of the scalp there: x, y, z, x, y, z. */
  skin: readonly number[]
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
export function growRib(head: Head, on: Footing, { depthMm, count, isClear }: RibWanted): Rib {
  const { points, skin } = walkRib(head.surface, on, depthMm, count)
  if (isClear) return { depthMm, points, skin, gaps: null, gapMm: 0 }
  const isIn = looksAlong(head.hairline, points)
  const last = isIn.lastIndexOf(true)
  if (last === isIn.length - 1) {
    const { gaps, gapMm } = gapsOf(head.hairline, points, isIn, depthMm)
    return { depthMm, points, skin, gaps, gapMm }
  }
  const stepMm = depthMm / (count - 1)
  const reachMm = stepMm * (last / looks) + reachInside(head, on, points, last, stepMm)
  const cut = walkRib(head.surface, on, reachMm, count)
  const isCutIn = looksAlong(head.hairline, cut.points)
  isCutIn[isCutIn.length - 1] = true
  const { gaps, gapMm } = gapsOf(head.hairline, cut.points, isCutIn, reachMm)
  return { depthMm: reachMm, points: cut.points, skin: cut.skin, gaps, gapMm }
}

function walkRib(
  surface: Surface,
  on: Footing,
  depthMm: number,
  count: number,
): Pick<Rib, "points" | "skin"> {
  const walker = startFrom(on)
  const points: SurfacePoint[] = []
  const skin: number[] = []
  for (let i = 0; i < count; i++) {
    if (i > 0) walkOn(surface, walker, depthMm / (count - 1))
    points.push(surfacePoint(walker.u, walker.v))
    const { frame } = walker
    const x = frame[4] * frame[8] - frame[5] * frame[7]
    const y = frame[5] * frame[6] - frame[3] * frame[8]
    const z = frame[3] * frame[7] - frame[4] * frame[6]
    const size = Math.sqrt(x * x + y * y + z * z)
    skin.push(frame[0], frame[1], frame[2], x / size, y / size, z / size)
  }
  return { points, skin }
}

/** Where a rib starts, heading square to the parting, and a walker to be sent from there: both are used again for the next rib. */
export type Footing = { foot: Moving; walker: Moving }

function startFrom({ foot, walker }: Footing): Moving {
  walker.u = foot.u
  walker.v = foot.v
  walker.x = foot.x
  walker.y = foot.y
  walker.z = foot.z
  walker.frame.set(foot.frame)
  return walker
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
  on: Footing,
  points: readonly SurfacePoint[],
  last: number,
  stepMm: number,
): number {
  const lookMm = stepMm / looks
  const from = placeOf(points, last)
  const share = shareInside(hairline, from, placeOf(points, last + 1))
  const walker = startFrom(on)
  walkOn(surface, walker, lookMm * (last + share))
  const near = surfacePoint(walker.u, walker.v)
  return hairline.contains(near)
    ? lookMm * (share + (1 - share) * shareInside(hairline, near, placeOf(points, last + 1)))
    : lookMm * share * shareInside(hairline, from, near)
}
