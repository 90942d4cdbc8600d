import type { Mesh } from "./mesh/mesh"
import type { SeenMesh } from "./mesh/seenMesh"
import { type ZeroLoop, zeroLoops } from "./zeroLoops"

/** A place where the surface turns away from the viewer. */
export type ContourPoint = {
  /** Page place and depth toward the viewer, mm. */
  x: number
  y: number
  depth: number
  /** The direction on the page in which the surface ends. */
  outX: number
  outY: number
  /** Above 0 where the surface turns away outward; below 0 where it turns away behind itself and cannot be seen. */
  bulge: number
}

/** The closed loops along which a closed mesh turns away from the viewer: the zero set of `facing`. */
export const contoursOf = (mesh: Mesh, seen: SeenMesh): ContourPoint[][] =>
  zeroLoops(mesh, seen.facing).map((loop) => loop.edges.map((_, i) => contourPoint(mesh, seen, loop, i)))

function contourPoint(mesh: Mesh, seen: SeenMesh, { edges, shares, triangles }: ZeroLoop, i: number) {
  const [a, b] = [mesh.edges[2 * edges[i]], mesh.edges[2 * edges[i] + 1]]
  const between = (values: Float64Array) => values[a] + (values[b] - values[a]) * shares[i]
  const before = triangles[i === 0 ? triangles.length - 1 : i - 1]
  return {
    x: between(seen.x),
    y: between(seen.y),
    depth: between(seen.depth),
    outX: between(seen.outX),
    outY: between(seen.outY),
    bulge: bulgeOf(mesh, seen, before) + bulgeOf(mesh, seen, triangles[i]),
  }
}

/** The slope of `facing` toward the viewer within a triangle. */
function bulgeOf({ triangles }: Mesh, { x, y, depth, facing }: SeenMesh, triangle: number) {
  const [a, b, c] = [triangles[3 * triangle], triangles[3 * triangle + 1], triangles[3 * triangle + 2]]
  const [bx, by, bz] = [x[b] - x[a], y[b] - y[a], depth[b] - depth[a]]
  const [cx, cy, cz] = [x[c] - x[a], y[c] - y[a], depth[c] - depth[a]]
  const [nx, ny, nz] = [by * cz - bz * cy, bz * cx - bx * cz, bx * cy - by * cx]
  const [gainB, gainC] = [facing[b] - facing[a], facing[c] - facing[a]]
  return (gainB * (cx * ny - cy * nx) + gainC * (nx * by - ny * bx)) / (nx * nx + ny * ny + nz * nz)
}
