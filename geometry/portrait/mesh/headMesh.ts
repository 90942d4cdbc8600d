import { ambientOcclusion } from "./ambientOcclusion"
import { drawnHeadDistance, neckEndMm } from "./drawnHead"
import { rightEarDistance } from "./ear"
import { type Mesh, meshOf, mirroredMesh, symmetricMeshOf } from "./mesh"
import { planesBetween } from "./surfaceNets"

/** A part of the body; each point's wash is how closed in it is and how strongly it is shaded at all, 0 to 1. */
export type BodyPart = {
  name: "head" | "ear"
  mesh: Mesh
  washes: { hollow: Float64Array; strength: Float64Array }
}

let made: BodyPart[] | null = null

/** The unscaled head with its neck, and both ears, as meshes in mm; made on first use. */
export function bodyParts(): BodyPart[] {
  made ??= makeBodyParts()
  return made
}

export const rightEarMesh = (): Mesh => bodyParts()[1].mesh

/** Cells are finer where the nose and the lips are. */
function makeBodyParts(): BodyPart[] {
  const mesh = symmetricMeshOf(drawnHeadDistance, {
    x: planesBetween(1.2, 100, (x) => (x < 26 ? 2.4 : 4)),
    y: planesBetween(-135, 140, (y) => (y > 72 ? 2.4 : 4)),
    z: planesBetween(-175, 145, (z) => (z > -66 && z < -8 ? 2.2 : 4)),
  })
  const even = (from: number, to: number) => planesBetween(from, to, () => 1.6)
  const ear = meshOf(rightEarDistance, { x: even(40, 115), y: even(-60, 35), z: even(-60, 60) })
  const rightEar = bodyPart("ear", ear, ambientOcclusion(ear, rightEarDistance, 5))
  return [
    bodyPart("head", mesh, ambientOcclusion(mesh, drawnHeadDistance, 12)),
    rightEar,
    { ...rightEar, mesh: mirroredMesh(ear) },
  ]
}

function bodyPart(name: BodyPart["name"], mesh: Mesh, hollow: Float64Array): BodyPart {
  const strength = hollow.map((_, i) =>
    Math.min(1, Math.max(0, (mesh.points[3 * i + 2] - neckEndMm - 6) / 50)),
  )
  return { name, mesh, washes: { hollow, strength } }
}
