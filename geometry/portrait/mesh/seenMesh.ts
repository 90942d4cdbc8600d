import { divide, multiply, type Vec3 } from "../../surface/vec3"
import type { OrthographicView } from "../../surface/views"
import type { Mesh } from "./mesh"

/**
 * The points of a mesh as a view sees them: page place and depth toward the viewer, mm; their normals in the same
 * three directions, of which `facing` above 0 looks at the viewer.
 */
export type SeenMesh = {
  x: Float64Array
  y: Float64Array
  depth: Float64Array
  outX: Float64Array
  outY: Float64Array
  facing: Float64Array
}

type Points = Pick<Mesh, "points" | "normals">

/** One set of arrays a mesh, lent for one look: a turning head would otherwise leave megabytes a second behind. */
const lent = new WeakMap<Float64Array, SeenMesh>()

/**
 * Looks at a mesh scaled by `axes` about the origin; normals scale the other way. The next look at the same mesh
 * overwrites what this one gave.
 */
export function seePoints({ points, normals }: Points, axes: Vec3, view: OrthographicView): SeenMesh {
  const seen = lent.get(points) ?? blank(points.length / 3)
  lent.set(points, seen)
  along(points, multiply(view.right, axes), seen.x)
  along(points, multiply(view.up, axes), seen.y)
  along(points, multiply(view.toward, axes), seen.depth)
  along(normals, divide(view.right, axes), seen.outX)
  along(normals, divide(view.up, axes), seen.outY)
  along(normals, divide(view.toward, axes), seen.facing)
  return seen
}

function blank(count: number): SeenMesh {
  const fresh = () => new Float64Array(count)
  return { x: fresh(), y: fresh(), depth: fresh(), outX: fresh(), outY: fresh(), facing: fresh() }
}

/** The dot product of every point with one vector, into an array of their number. */
export function along(points: Float64Array, direction: Vec3, into: Float64Array): Float64Array {
  const x = direction[0]
  const y = direction[1]
  const z = direction[2]
  const count = into.length
  for (let i = 0, j = 0; i < count; i++, j += 3)
    into[i] = points[j] * x + points[j + 1] * y + points[j + 2] * z
  return into
}
