import { type SurfacePoint, surfacePoint, type ViewPoint } from "./frames"
import { normalAt, type Surface } from "./surface"
import { dot, type Vec3 } from "./vec3"
import { type OrthographicView, toView } from "./views"

/** Where the head turns away from the viewer, once round its page; `turn` is the angle on the page about the middle, radians. */
export type Horizon = readonly { turn: number; page: ViewPoint; at: SurfacePoint }[]

const rings = 36
const spokes = 72
const farthest = 3.12

type Grid = readonly { at: SurfacePoint; normal: Vec3 }[]
const knownGrids = new WeakMap<Surface, Grid>()

/** The horizon of a head's surface in an orthographic view: where a net over it (5 by 5 degrees) changes from facing to hidden. */
export function horizonOf(view: OrthographicView, surface: Surface): Horizon {
  const grid = gridOver(surface)
  const facing = grid.map(({ normal }) => dot(normal, view.toward))
  const found: SurfacePoint[] = []
  const look = (one: number, other: number) => {
    if (facing[one] > 0 === facing[other] > 0) return
    found.push(between(grid[one].at, grid[other].at, facing[one] / (facing[one] - facing[other])))
  }
  for (let ring = 0; ring < rings; ring++)
    for (let spoke = 0; spoke < spokes; spoke++) {
      const here = ring * spokes + spoke
      look(here, ring * spokes + ((spoke + 1) % spokes))
      if (ring + 1 < rings) look(here, here + spokes)
    }
  return steady(
    found.map((at) => placed(at, view, surface)),
    surface,
    view,
  )
}

const neighbours = 7
/** Of two horizons as many places strong the outer one is the outline. */
const outward = 3
const steadyShare = 0.12

/** Those that lie about as far out as most beside them: the nape, the neck and the face have small horizons of their own. */
function steady(places: Horizon, surface: Surface, view: OrthographicView): Horizon {
  const middle = middleOf(view, surface)
  const sorted = [...places].sort((a, b) => a.turn - b.turn)
  const outMm = sorted.map(({ page }) => Math.hypot(page[0] - middle[0], page[1] - middle[1]))
  return sorted.filter((_, i) => {
    const beside = Array.from(
      { length: 2 * neighbours + 1 },
      (_, j) => outMm[(i + j - neighbours + outMm.length) % outMm.length],
    )
    const usual = beside.sort((a, b) => a - b)[neighbours + outward]
    return Math.abs(outMm[i] - usual) < steadyShare * usual
  })
}

const middleOf = ({ right, up }: OrthographicView, { centre }: Surface) => [
  dot(right, centre),
  dot(up, centre),
]

/** A place with where it lies on the page. */
export function placed(at: SurfacePoint, view: OrthographicView, surface: Surface): Horizon[number] {
  const page = toView(view, surface, at)
  const middle = middleOf(view, surface)
  return { at, page, turn: Math.atan2(page[1] - middle[1], page[0] - middle[0]) }
}

/** A place between two others of the scalp map. */
export const between = (from: SurfacePoint, to: SurfacePoint, share: number): SurfacePoint =>
  surfacePoint(from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1]))

function gridOver(surface: Surface): Grid {
  const known = knownGrids.get(surface)
  if (known) return known
  const fresh = Array.from({ length: rings * spokes }, (_, i) => {
    const reach = (farthest * (Math.floor(i / spokes) + 0.5)) / rings
    const turn = (2 * Math.PI * (i % spokes)) / spokes
    const at = surfacePoint(reach * Math.cos(turn), reach * Math.sin(turn))
    return { at, normal: normalAt(surface, at) }
  })
  knownGrids.set(surface, fresh)
  return fresh
}
