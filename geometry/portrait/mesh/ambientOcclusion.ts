import type { Field } from "../../scalp/fields"
import type { Mesh } from "./mesh"

/** How closed in each point of a mesh is by a field within `reachMm`, 0 in the open to 1 (ambient occlusion read off the distance). */
export const ambientOcclusion = ({ points, normals }: Mesh, field: Field, reachMm: number): Float64Array =>
  Float64Array.from({ length: points.length / 3 }, (_, i) => {
    const along = (axis: number) => points[3 * i + axis] + normals[3 * i + axis] * reachMm
    return Math.min(1, Math.max(0, 1 - field(along(0), along(1), along(2)) / reachMm))
  })
