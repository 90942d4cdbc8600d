import { bearingOf, directionOf } from "../parting/direction"
import { cleanParting, hairlineParting, type Parted } from "../parting/parting"
import type { Head } from "../scalp/head"
import { cutPath, extendPath } from "../surface/extendPath"
import type { SurfacePoint } from "../surface/frames"
import { nearestOnPath } from "../surface/nearestOnPath"
import { smoothLine } from "../surface/spline"
import { measurePath, pointAlong, type SurfacePath } from "../surface/surfacePath"
import { degreesBetween, turnAbout } from "./snap"
import { placeBehind } from "./technique"

const piecesEach = 8

/** The smooth line through the points of a parting, and its length on the surface, mm. */
const lineOf = ({ surface }: Head, parting: SurfacePath) =>
  measurePath(surface, smoothLine(parting, piecesEach))

/** How long a parting is along its smooth line, mm. */
export const partingLengthMm = (head: Head, parting: SurfacePath) => lineOf(head, parting).lengthMm

/**
 * A parting made so many mm long, by as much at each end. It goes on straight over the scalp; along the hairline when
 * it runs parallel to it. Where the hairline ends it sooner it comes out shorter.
 */
export function stretchParting(head: Head, parting: SurfacePath, wantedMm: number): Parted {
  const { points, lengthMm: nowMm } = lineOf(head, parting)
  const moreMm = Math.max(0, wantedMm - nowMm)
  const isParallel = directionOf(parting, head.surface, head.hairline).name === "parallel to hairline"
  const longer =
    isParallel && moreMm > 0
      ? alongHairline(head, points, moreMm)
      : extendPath(head.surface, points, moreMm, moreMm)
  return cutRound(head, longer, middleOf(head, points), wantedMm)
}

const middleOf = ({ surface }: Head, line: SurfacePath): SurfacePoint => {
  const measured = measurePath(surface, line)
  return pointAlong(measured, measured.lengthMm / 2)
}

/** So many mm of a line, with a place of it in the middle. */
function cutRound(head: Head, line: SurfacePath, middle: SurfacePoint, wantedMm: number): Parted {
  const { alongMm } = nearestOnPath(
    head.surface,
    measurePath(head.surface, line),
  )(head.surface.pointAt(middle))
  return cleanParting(head, cutPath(head.surface, line, alongMm - wantedMm / 2, alongMm + wantedMm / 2))
}

const stepMm = 3

/** A line with places added at both ends that keep the ends' own distances behind the hairline. */
function alongHairline(head: Head, line: SurfacePath, mm: number): SurfacePath {
  const [first, last] = [line[0], line[line.length - 1]].map(head.hairline.coordinates)
  const sense = Math.sign(last.alongMm - first.alongMm) || 1
  const steps = Math.ceil((1.5 * mm) / stepMm)
  const beyond = (from: typeof first, way: number) =>
    Array.from({ length: steps }, (_, i) =>
      placeBehind(head, from.alongMm + way * stepMm * (i + 1), from.behindMm),
    )
  return [...beyond(first, -sense).toReversed(), ...line, ...beyond(last, sense)]
}

/** A parting turned about its middle until it runs at a bearing; null when the scalp there has no line that does. */
export function turnParting(head: Head, parting: SurfacePath, bearing: number): SurfacePath | null {
  const turn = turnAbout(head.surface, middleOf(head, parting))
  let byDegrees = 0
  for (let i = 0; i < 12; i++) {
    const turned = parting.map((at) => turn(at, byDegrees))
    const off = degreesBetween(bearingOf(head.surface, turned[0], turned[turned.length - 1]), bearing)
    if (Math.abs(off) < 0.05) return turned
    byDegrees += off
  }
  return null
}

/** A parting as long as this one, round its middle, that keeps its middle's distance behind the hairline. */
export function parallelParting(head: Head, parting: SurfacePath): Parted {
  const middle = middleOf(head, parting)
  const nowMm = lineOf(head, parting).lengthMm
  const { alongMm, behindMm } = head.hairline.coordinates(middle)
  const made = hairlineParting(head, {
    fromAlongMm: alongMm - 1.5 * nowMm,
    toAlongMm: alongMm + 1.5 * nowMm,
    behindMm,
  })
  return "refused" in made ? made : cutRound(head, made.parting, middle, nowMm)
}
