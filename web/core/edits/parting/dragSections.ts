import { headMapFrame } from "../../../../geometry/scalp/headSurface"
import type { SurfacePoint } from "../../../../geometry/surface/frames"
import { mapDirections } from "../../../../geometry/surface/surface"
import { add, cross, dot, length, scale, type Vec3 } from "../../../../geometry/surface/vec3"
import type { Edit } from "../../document/edit"
import { replaceSections } from "../sections/replaceSections"

const directions = mapDirections(headMapFrame.poleTilt)
const directionOf = ([u, v]: SurfacePoint) => directions.at(u, v)

/** Turns partings about the head's centre so that the place first touched comes under the place touched now. */
export function dragSections(ids: readonly string[], from: SurfacePoint, to: SurfacePoint): Edit {
  const turn = turnBetween(from, to)
  return replaceSections(ids, (section) => ({ ...section, parting: section.parting.map(turn) }))
}

/** The turn about the head's centre that takes one place to another by the shortest way. */
export function turnBetween(from: SurfacePoint, to: SurfacePoint): (at: SurfacePoint) => SurfacePoint {
  const turn = rotationBetween(directionOf(from), directionOf(to))
  return (at) => directions.inverse(turn(directionOf(at)))
}

/** The smallest rotation that takes one unit vector to another (Rodrigues). */
function rotationBetween(from: Vec3, to: Vec3): (vector: Vec3) => Vec3 {
  const axis = cross(from, to)
  const sine = length(axis)
  if (sine < 1e-12) return (vector) => vector
  const unit = scale(axis, 1 / sine)
  const cosine = dot(from, to)
  return (vector) =>
    add(
      add(scale(vector, cosine), scale(cross(unit, vector), sine)),
      scale(unit, dot(unit, vector) * (1 - cosine)),
    )
}
