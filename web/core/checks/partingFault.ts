import type { Head } from "../../../geometry/scalp/head"
import { crossesItself } from "../../../geometry/surface/crossesItself"
import type { SurfacePoint } from "../../../geometry/surface/frames"
import { smoothLine } from "../../../geometry/surface/spline"
import { measurePath } from "../../../geometry/surface/surfacePath"

/** What makes a parting impossible to comb: where (a point of it, or all of it) and how it should be. */
export type PartingFault = { point: number | null; expected: string }

/** The hairline is a model good to a couple of millimetres: a parting may stray this far over it. */
const strayMm = 2
const shortestMm = 2
/** How finely the smooth line through the points is looked at, between each two. */
const piecesEach = 4

export function partingFault(parting: readonly SurfacePoint[], head: Head): PartingFault | null {
  const outside = parting.findIndex((at) => isOutside(at, head))
  if (outside >= 0)
    return { point: outside, expected: "expected a place inside the hairline, found one outside it" }
  const { points, lengthMm } = measurePath(head.surface, smoothLine(parting, piecesEach))
  if (points.some((at) => isOutside(at, head)))
    return { point: null, expected: "expected a line inside the hairline, found one that leaves it" }
  if (lengthMm < shortestMm)
    return {
      point: null,
      expected: `expected a line at least ${shortestMm} mm long, found ${lengthMm.toFixed(1)} mm`,
    }
  if (crossesItself(parting)) return { point: null, expected: "expected a line that does not cross itself" }
  return null
}

const isOutside = (at: SurfacePoint, { hairline }: Head) =>
  !hairline.contains(at) && hairline.coordinates(at).behindMm < -strayMm
