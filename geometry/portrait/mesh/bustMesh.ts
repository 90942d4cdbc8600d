import { bustDistance } from "../../strands/bust"
import { type Mesh, symmetricMeshOf } from "./mesh"
import { planesBetween } from "./surfaceNets"

let made: Mesh | null = null

/** Neck, shoulders and chest as a mesh in mm; made on first use. */
export function bustMesh(): Mesh {
  made ??= symmetricMeshOf(bustDistance, {
    x: planesBetween(3, 230, () => 9),
    y: planesBetween(-180, 120, () => 9),
    z: planesBetween(-420, -60, () => 9),
  })
  return made
}
