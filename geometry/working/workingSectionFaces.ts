import type { SurfacePoint } from "../surface/frames"
import { mapDistance, type SurfacePath } from "../surface/surfacePath"
import type { Net, Stretch } from "./workingSectionNet"

/** What a net encloses: a closed outline, walked to the left, and the stretches it is made of. */
export type Face = { ring: SurfacePath; sides: readonly Stretch[] }

/** A stretch walked one way. */
type Way = { stretch: Stretch; isForward: boolean; angle: number }

/** The faces of a net without loose ends, the one outside left out. */
export function facesOf({ stretches }: Net): Face[] {
  const ways = stretches.flatMap((stretch): Way[] => [
    { stretch, isForward: true, angle: leaving(stretch.path) },
    { stretch, isForward: false, angle: leaving(stretch.path.toReversed()) },
  ])
  const next = nextWays(ways)
  const walked = new Set<number>()
  const faces: Face[] = []
  for (let start = 0; start < ways.length; start++) {
    if (walked.has(start)) continue
    const round: Way[] = []
    for (let way = start; !walked.has(way); way = next[way]) {
      walked.add(way)
      round.push(ways[way])
    }
    const ring = round.flatMap(({ stretch: { path }, isForward }) =>
      (isForward ? path : path.toReversed()).slice(0, -1),
    )
    if (mapArea(ring) > 0) faces.push({ ring, sides: round.map(({ stretch }) => stretch) })
  }
  return faces
}

/** For each way the one that goes on from its end with the same face on its left: the next clockwise from the way back. */
function nextWays(ways: readonly Way[]): number[] {
  const leavingFrom = new Map<number, number[]>()
  for (const [i, { stretch, isForward }] of ways.entries()) {
    const knot = isForward ? stretch.from : stretch.to
    leavingFrom.set(knot, [...(leavingFrom.get(knot) ?? []), i])
  }
  const next = new Array<number>(ways.length)
  for (const around of leavingFrom.values()) {
    around.sort((a, b) => ways[a].angle - ways[b].angle)
    for (const [rank, way] of around.entries())
      next[way ^ 1] = around[(rank + around.length - 1) % around.length]
  }
  return next
}

/** Far enough from a knot for a direction that is not the knot's own, radians. */
const awayRadians = 0.025

function leaving(path: SurfacePath): number {
  const [from] = path
  const toward = path.find((at) => mapDistance(at, from) > awayRadians) ?? path[path.length - 1]
  return Math.atan2(toward[1] - from[1], toward[0] - from[0])
}

/** Area of a closed outline in the scalp map, square radians; positive when it is walked to the left. */
export function mapArea(ring: SurfacePath): number {
  let twice = 0
  for (let i = 0; i < ring.length; i++) {
    const [[u0, v0], [u1, v1]]: [SurfacePoint, SurfacePoint] = [ring[i], ring[(i + 1) % ring.length]]
    twice += u0 * v1 - u1 * v0
  }
  return twice / 2
}
