import type { SurfacePoint } from "../surface/frames"
import type { SurfacePath } from "../surface/surfacePath"
import type { HairlineSide } from "./hairline"
import { stepsASide } from "./hairlineHalf"
import type { Head } from "./head"

/** Which side of a line, seen from outside in the direction of travel: 1 its left, -1 its right. */
export type Side = 1 | -1

/**
 * The side of a parting that is in front. At each piece the face lies toward the nearest point, in the scalp map,
 * of the hairline that borders it (sideburn to sideburn); the side that points there on the average over the line's
 * length is the front. A parting that favours neither side has its front on the head's right.
 */
export function frontSide(parting: SurfacePath, head: Head): Side {
  let [towardFace, towardRight] = [0, 0]
  for (let i = 1; i < parting.length; i++) {
    const [from, to] = [parting[i - 1], parting[i]]
    const [leftU, leftV] = [from[1] - to[1], to[0] - from[0]]
    const [u, v] = towardNearest(faceEdge(head), (from[0] + to[0]) / 2, (from[1] + to[1]) / 2)
    towardFace += leftU * u + leftV * v
    towardRight += leftU
  }
  const favours = Math.abs(towardFace) > 1e-9 ? towardFace : towardRight
  return favours >= 0 ? 1 : -1
}

/** The unit vector of the map from a place to the nearest of the points. */
function towardNearest(points: SurfacePath, u: number, v: number): readonly [number, number] {
  let nearest = Infinity
  let way: readonly [number, number] = [0, 0]
  for (const at of points) {
    const square = (at[0] - u) ** 2 + (at[1] - v) ** 2
    if (square >= nearest) continue
    nearest = square
    way = [at[0] - u, at[1] - v]
  }
  const length = Math.sqrt(nearest)
  return length === 0 ? way : [way[0] / length, way[1] / length]
}

const remembered = new WeakMap<Head, SurfacePath>()

/** Every other point of the hairline from sideburn to sideburn, about 6 mm apart. */
function faceEdge(head: Head): SurfacePath {
  const known = remembered.get(head)
  if (known) return known
  const { points, sides } = head.hairline
  const edge: SurfacePoint[] = []
  for (let i = 0; i <= faceSteps(sides.right); i += 2) edge.push(points[i])
  for (let i = 0; i <= faceSteps(sides.left); i += 2) edge.push(points[(points.length - i) % points.length])
  remembered.set(head, edge)
  return edge
}

const faceSteps = ({ faceReachMm, lengthMm }: HairlineSide) =>
  Math.round((faceReachMm / lengthMm) * stepsASide)
