import { headPoint, type SurfacePoint, type ViewPoint } from "./frames"
import { between, type Horizon, horizonOf, placed } from "./horizon"
import type { Surface } from "./surface"
import { contains } from "./surfacePatch"
import type { SurfacePath } from "./surfacePath"
import { add } from "./vec3"
import { facing, type OrthographicView, toView, type View } from "./views"

/** The parts of an area that face the viewer, as outlines on the page, mm. The area's outline is walked with it on the left. */
export function seenArea(ring: SurfacePath, view: View, surface: Surface): ViewPoint[][] {
  if (view.kind === "unrolled") return [ring.map((at) => toView(view, surface, at))]
  const seen = ring.map((at) => facing(view, surface, at) > 0)
  if (seen.every(Boolean)) return [ring.map((at) => toView(view, surface, at))]
  const horizon = horizonOf(view, surface)
  if (!seen.some(Boolean)) return isInMiddle(ring, view, surface) ? [horizon.map(({ page }) => page)] : []
  return joined(stretchesOf(ring, seen, view, surface), horizon)
}

/** Whether the place that looks the viewer in the eye lies in an area. */
const isInMiddle = (ring: SurfacePath, { toward }: OrthographicView, { centre, toSurface }: Surface) =>
  contains(ring, toSurface(headPoint(...add(centre, toward))))

/** A stretch of an outline that faces the viewer, from the horizon to the horizon. */
type Stretch = { from: number; to: number; path: ViewPoint[] }

function stretchesOf(
  ring: SurfacePath,
  seen: readonly boolean[],
  view: OrthographicView,
  surface: Surface,
): Stretch[] {
  const count = ring.length
  const edge = (hidden: number, shown: number) => {
    const [dark, light] = [facing(view, surface, ring[hidden]), facing(view, surface, ring[shown])]
    return placed(between(ring[hidden], ring[shown], dark / (dark - light)), view, surface)
  }
  return ring.flatMap((_, first): Stretch[] => {
    const before = (first + count - 1) % count
    if (!seen[first] || seen[before]) return []
    const shown: SurfacePoint[] = []
    let next = first
    for (; seen[next]; next = (next + 1) % count) shown.push(ring[next])
    const [start, end] = [edge(before, first), edge(next, (next + count - 1) % count)]
    const path = [start.page, ...shown.map((at) => toView(view, surface, at)), end.page]
    return [{ from: start.turn, to: end.turn, path }]
  })
}

/** Each stretch goes on along the horizon, the area on its left, to the next one that comes in. */
function joined(stretches: readonly Stretch[], horizon: Horizon): ViewPoint[][] {
  const left = new Set(stretches)
  const outlines: ViewPoint[][] = []
  for (const first of stretches) {
    const outline: ViewPoint[] = []
    for (let here = first; left.delete(here); ) {
      const next = nearestAfter(here.to, stretches)
      outline.push(...here.path, ...alongHorizon(here.to, next.from, horizon))
      here = next
    }
    if (outline.length > 0) outlines.push(outline)
  }
  return outlines
}

const onward = (from: number, to: number) => (to - from + 4 * Math.PI) % (2 * Math.PI)

const nearestAfter = (turn: number, stretches: readonly Stretch[]): Stretch =>
  stretches.reduce((best, each) => (onward(turn, each.from) < onward(turn, best.from) ? each : best))

const alongHorizon = (from: number, to: number, horizon: Horizon): ViewPoint[] =>
  horizon
    .filter(({ turn }) => onward(from, turn) < onward(from, to))
    .sort((a, b) => onward(from, a.turn) - onward(from, b.turn))
    .map(({ page }) => page)
