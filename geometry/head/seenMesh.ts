import { divide, multiply, type Vec3 } from "../vec3"
import type { OrthographicView } from "../views"
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

/** Looks at a mesh scaled by `axes` about the origin; normals scale the other way. */
export function seePoints(
  { points, normals }: Pick<Mesh, "points" | "normals">,
  axes: Vec3,
  view: OrthographicView,
): SeenMesh {
  return {
    x: along(points, multiply(view.right, axes)),
    y: along(points, multiply(view.up, axes)),
    depth: along(points, multiply(view.toward, axes)),
    outX: along(normals, divide(view.right, axes)),
    outY: along(normals, divide(view.up, axes)),
    facing: along(normals, divide(view.toward, axes)),
  }
}

/** The dot product of every point with one vector. */
export function along(points: Float64Array, [x, y, z]: Vec3): Float64Array {
  const products = new Float64Array(points.length / 3)
  for (let i = 0, j = 0; i < products.length; i++, j += 3)
    products[i] = points[j] * x + points[j + 1] * y + points[j + 2] * z
  return products
}
