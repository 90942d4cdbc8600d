import type { Field } from "../../scalp/fields"
import { type Planes, type Quads, surfaceNets } from "./surfaceNets"

/**
 * A closed surface of triangles, head frame mm: three numbers a point, a unit normal a point, three points a triangle,
 * counter-clockwise seen from outside. Edge `triangleEdges[3 * t + k]` runs from corner k of triangle t to the next.
 */
export type Mesh = {
  points: Float64Array
  normals: Float64Array
  triangles: Uint32Array
  /** Two points an edge. */
  edges: Uint32Array
  triangleEdges: Uint32Array
}

/** The mesh of the surface between the planes of a grid, mm, its points moved onto the surface. */
export const meshOf = (field: Field, planes: Planes): Mesh =>
  withEdges(settled(field, surfaceNets(field, planes)))

/** The mesh of a surface that is its own mirror image in x, mm: the right half is made, from planes above x = 0, and mirrored. */
export function symmetricMeshOf(field: Field, { x, y, z }: Planes): Mesh {
  const half = surfaceNets(field, { x: [-x[0], ...x], y, z })
  for (let i = 0; i < half.points.length; i += 3) if (Math.abs(half.points[i]) < 1e-6) half.points[i] = 0
  return withEdges(withMirrorImage(settled(field, half)))
}

/** The mirror image in x of a mesh. */
export const mirroredMesh = ({ points, normals, triangles }: Mesh): Mesh =>
  withEdges({
    points: points.map((value, i) => (i % 3 === 0 ? -value : value)),
    normals: normals.map((value, i) => (i % 3 === 0 ? -value : value)),
    triangles: turnedOver(triangles),
  })

type Faces = Pick<Mesh, "points" | "normals" | "triangles">

/** Points moved down the slope of the field until they lie on its surface; the last slope is the normal. */
function settled(field: Field, { points, quads }: Quads): Faces {
  const places = new Float64Array(points)
  const normals = new Float64Array(points.length)
  for (let i = 0; i < points.length; i += 3) {
    for (let pass = 0; pass < 12; pass++) {
      const { height, slope } = feel(field, places[i], places[i + 1], places[i + 2])
      // In a sharp fold full steps may swing from side to side.
      const step = pass < 3 ? height : height / 2
      for (let axis = 0; axis < 3; axis++) places[i + axis] -= slope[axis] * step
      normals.set(slope, i)
      if (Math.abs(height) < 0.04) break
    }
  }
  return { points: places, normals, triangles: new Uint32Array(trianglesOf(places, quads)) }
}

/** Distance and unit slope from four samples at the corners of a small tetrahedron; on the midline the slope keeps to it. */
function feel(field: Field, x: number, y: number, z: number) {
  const h = 0.05
  const a = field(x + h, y - h, z - h)
  const b = field(x - h, y - h, z + h)
  const c = field(x - h, y + h, z - h)
  const d = field(x + h, y + h, z + h)
  const [sx, sy, sz] = [x === 0 ? 0 : a - b - c + d, c + d - a - b, b + d - a - c]
  const size = Math.sqrt(sx * sx + sy * sy + sz * sz)
  return { height: (a + b + c + d) / 4, slope: [sx / size, sy / size, sz / size] }
}

/** Each quad is split along its shorter diagonal. */
function trianglesOf(points: Float64Array, quads: number[]) {
  const apart = (a: number, b: number) =>
    (points[3 * a] - points[3 * b]) ** 2 +
    (points[3 * a + 1] - points[3 * b + 1]) ** 2 +
    (points[3 * a + 2] - points[3 * b + 2]) ** 2
  const triangles: number[] = []
  for (let q = 0; q < quads.length; q += 4) {
    const [a, b, c, d] = [quads[q], quads[q + 1], quads[q + 2], quads[q + 3]]
    if (apart(a, c) <= apart(b, d)) triangles.push(a, b, c, a, c, d)
    else triangles.push(a, b, d, b, c, d)
  }
  return triangles
}

/** Joins a right half to its mirror image; points at x = 0 are shared. */
function withMirrorImage({ points, normals, triangles }: Faces): Faces {
  const count = points.length / 3
  const imageOf = new Uint32Array(count)
  let total = count
  for (let i = 0; i < count; i++) imageOf[i] = points[3 * i] === 0 ? i : total++
  const withImages = (values: Float64Array) => {
    const all = new Float64Array(3 * total)
    all.set(values)
    for (let i = 0; i < count; i++)
      if (imageOf[i] !== i) all.set([-values[3 * i], values[3 * i + 1], values[3 * i + 2]], 3 * imageOf[i])
    return all
  }
  const both = new Uint32Array(2 * triangles.length)
  both.set(triangles)
  both.set(
    turnedOver(triangles).map((point) => imageOf[point]),
    triangles.length,
  )
  return { points: withImages(points), normals: withImages(normals), triangles: both }
}

/** Triangles run the other way round, as a mirror image needs. */
const turnedOver = (triangles: Uint32Array) =>
  triangles.map((_, i) => triangles[i % 3 === 0 ? i : i % 3 === 1 ? i + 1 : i - 1])

function withEdges(faces: Faces): Mesh {
  const { triangles, points } = faces
  const count = points.length / 3
  const edges: number[] = []
  const edgeBetween = new Map<number, number>()
  const triangleEdges = triangles.map((from, i) => {
    const to = triangles[i % 3 === 2 ? i - 2 : i + 1]
    const key = Math.min(from, to) * count + Math.max(from, to)
    const known = edgeBetween.get(key)
    if (known !== undefined) return known
    edgeBetween.set(key, edges.length / 2)
    edges.push(from, to)
    return edges.length / 2 - 1
  })
  return { ...faces, edges: new Uint32Array(edges), triangleEdges }
}
