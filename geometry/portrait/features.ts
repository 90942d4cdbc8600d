import type { Field } from "../scalp/fields"
import { smoothThrough } from "../surface/smoothThrough"
import { normalize, subtract, type Vec3 } from "../surface/vec3"
import { earCrease } from "./earCrease"
import { earCurves } from "./earCurves"
import type { FaceCurve } from "./faceCurve"
import { faceCurves } from "./faceCurves"
import type { Feature } from "./headLine"
import { castRay } from "./mesh/castRay"
import { drawnHeadDistance } from "./mesh/drawnHead"
import { fromPlainEar, rightEarDistance } from "./mesh/ear"
import { rightEarMesh } from "./mesh/headMesh"

let made: Feature[] | null = null

/** Lids, brows, nose, lips and the folds of the ears, cast on the surface on first use. */
export function features(): Feature[] {
  made ??= makeFeatures()
  return made
}

function makeFeatures(): Feature[] {
  const crease = earCrease(rightEarMesh(), drawnHeadDistance)
  return [
    ...faceCurves.flatMap((curve) => castCurve(curve, drawnHeadDistance, rays[curve.seenFrom])),
    ...earCurves.flatMap((curve) => castCurve(curve, rightEarDistance, earRay)),
    crease,
    mirroredFeature(crease),
  ]
}

type Ray = (a: number, b: number) => [origin: Vec3, direction: Vec3]

const rays: Record<FaceCurve["seenFrom"], Ray> = {
  front: (x, z) => [
    [x, 200, z],
    [0, -1, 0],
  ],
  right: (y, z) => [
    [200, y, z],
    [-1, 0, 0],
  ],
}
const earRay: Ray = (forward, up) => {
  const [from, to] = [fromPlainEar([forward, up, 30]), fromPlainEar([forward, up, -30])]
  return [from, normalize(subtract(to, from))]
}

function castCurve(curve: Omit<FaceCurve, "seenFrom">, field: Field, ray: Ray): Feature[] {
  const places: Vec3[] = []
  for (const [a, b] of smoothThrough(curve.points, 1)) {
    const place = castRay(field, ...ray(a, b))
    if (place) places.push(place)
  }
  const right = featureOf(curve, places, field)
  return curve.isMirrored ? [right, mirroredFeature(right)] : [right]
}

const mirroredFeature = ({ points, normals, ...rest }: Feature): Feature => ({
  ...rest,
  points: points.map((value, i) => (i % 3 === 0 ? -value : value)),
  normals: normals.map((value, i) => (i % 3 === 0 ? -value : value)),
})

const featureOf = (
  { part, weight }: Pick<FaceCurve, "part" | "weight">,
  places: Vec3[],
  field: Field,
): Feature => ({
  part,
  weight,
  points: new Float64Array(places.flat()),
  normals: new Float64Array(places.flatMap((place) => slopeAt(field, place))),
})

function slopeAt(field: Field, [x, y, z]: Vec3): Vec3 {
  const h = 0.3
  return normalize([
    field(x + h, y, z) - field(x - h, y, z),
    field(x, y + h, z) - field(x, y - h, z),
    field(x, y, z + h) - field(x, y, z - h),
  ])
}
