import { determinant, inverse, type Matrix3, times } from "../surface/matrix3"
import { dot, subtract, type Vec3 } from "../surface/vec3"
import type { CaliperMm } from "./headMeasures"
import type { HeadPrior } from "./headSize"

/** A caliper's three readings as one vector, mm, and back. */
export const vectorOf = ({ lengthMm, breadthMm, heightMm }: CaliperMm): Vec3 => [
  lengthMm,
  breadthMm,
  heightMm,
]
export const caliperOf = ([lengthMm, breadthMm, heightMm]: Vec3): CaliperMm => ({
  lengthMm,
  breadthMm,
  heightMm,
})

/** How the three readings scatter together between people, mm2. */
export function spreadOf({
  sdMm: { lengthMm: l, breadthMm: b, heightMm: h },
  correlation,
}: HeadPrior): Matrix3 {
  const [lb, lh, bh] = [
    correlation.lengthBreadth * l * b,
    correlation.lengthHeight * l * h,
    correlation.breadthHeight * b * h,
  ]
  return [
    [l * l, lb, lh],
    [lb, b * b, bh],
    [lh, bh, h * h],
  ]
}

/** Log of how likely a head is under a survey, but for what all surveys share. */
export function logDensity(prior: HeadPrior, caliper: CaliperMm): number {
  const spread = spreadOf(prior)
  const off = subtract(vectorOf(caliper), vectorOf(prior.meanMm))
  return -(dot(off, times(inverse(spread), off)) + Math.log(determinant(spread))) / 2
}
