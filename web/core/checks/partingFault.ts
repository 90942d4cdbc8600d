import type { Head } from "../../../geometry/scalp/head"
import { crossesItself } from "../../../geometry/surface/crossesItself"
import type { SurfacePoint } from "../../../geometry/surface/frames"
import { smoothLine } from "../../../geometry/surface/spline"
import { measurePath } from "../../../geometry/surface/surfacePath"
import type { DrawingCode } from "../fields/problem"

/** What makes a parting impossible to comb: where (a point of it, or all of it) and what is wrong there. */
export type PartingFault = { point: number | null; fault: DrawingCode }

/** The hairline is a model good to a couple of millimetres: a parting may stray this far over it. */
const strayMm = 2
const shortestMm = 2
/** How finely the smooth line through the points is looked at, between each two. */
const piecesEach = 4

export function partingFault(parting: readonly SurfacePoint[], head: Head): PartingFault | null {
  const outside = parting.findIndex((at) => isOutside(at, head))
  if (outside >= 0) return { point: outside, fault: { code: "place-outside" } }
  const { points, lengthMm } = measurePath(head.surface, smoothLine(parting, piecesEach))
  if (points.some((at) => isOutside(at, head))) return { point: null, fault: { code: "line-outside" } }
  if (lengthMm < shortestMm)
    return {
      point: null,
      fault: { code: "line-too-short", leastMm: shortestMm, foundMm: lengthMm },
    }
  if (crossesItself(parting)) return { point: null, fault: { code: "line-crosses-itself" } }
  return null
}

const isOutside = (at: SurfacePoint, { hairline }: Head) =>
  !hairline.contains(at) && hairline.coordinates(at).behindMm < -strayMm
