import { frontSide } from "../scalp/frontSide"
import type { Head } from "../scalp/head"
import { longestRunInside } from "../scalp/longestRunInside"
import { crossesItself } from "../surface/crossesItself"
import type { SurfacePoint } from "../surface/frames"
import { offsetPath } from "../surface/offsetPath"
import { smoothLine } from "../surface/spline"
import {
  type MeasuredPath,
  measurePath,
  resampleMeasured,
  type SurfacePath,
  smooth,
} from "../surface/surfacePath"
import { add, normalize, scale, subtract } from "../surface/vec3"
import { keepLeastBend } from "./leastBend"

/** A parting that can be combed, or the reason why there is none. */
export type Parted = { parting: SurfacePath } | { refused: PartingRefusal }
export type PartingRefusal = "too-short" | "outside-hairline" | "crosses-itself"

const shortestMm = 4
/** Points of a parting stand this far apart, unless that made more of them than a hand can move. */
const spacingMm = 6
const mostPoints = 48
/** A hand's tremor is shorter than a few of these steps, and the bends it means are longer. */
const handStepMm = 3
const handPasses = 8

/** The parting a tail comb draws straight from one place to another: the shorter way in the plane through the head's centre. */
export const straightParting = (head: Head, from: SurfacePoint, to: SurfacePoint): Parted =>
  cleanParting(head, planeSection(head, from, to))

/** The parting meant by a line drawn by hand. */
export function freehandParting(head: Head, drawn: SurfacePath): Parted {
  if (drawn.length === 0) return { refused: "too-short" }
  return cleanParting(head, smooth(evenly(head, drawn), handPasses))
}

function evenly({ surface }: Head, line: SurfacePath): SurfacePath {
  const measured = measurePath(surface, line)
  return resampleMeasured(measured, countFor(measured, handStepMm, 1000))
}

/** How far over the hairline, mm, a line may stray that is kept as it is: the hairline is a model, good to that. */
const strayMm = 2
const piecesEach = 4

/** The parting through places told one by one: these very places, unless the line through them leaves the hairline. */
export function partingThrough(head: Head, places: SurfacePath): Parted {
  const line = smoothLine(places, piecesEach)
  const strays = (at: SurfacePoint) =>
    !head.hairline.contains(at) && head.hairline.coordinates(at).behindMm < -strayMm
  if (line.length < 2 || line.some(strays)) return cleanParting(head, line)
  return crossesItself(places) ? { refused: "crosses-itself" } : { parting: places }
}

/** Where a parting runs that follows the hairline: from and to so far along it, so many mm inside. */
export type AlongHairline = { fromAlongMm: number; toAlongMm: number; behindMm: number }

/** The parting that keeps its distance from the hairline, and from where the hairline goes on past its ends. */
export function hairlineParting(head: Head, { fromAlongMm, toAlongMm, behindMm }: AlongHairline): Parted {
  const inward = toAlongMm > fromAlongMm ? -behindMm : behindMm
  const edge = hairlineBetween(head, fromAlongMm, toAlongMm)
  const offset = offsetPath(head.surface, edge, inward, head.hairline.distanceMm)
  if (offset.length < 2) return { refused: "too-short" }
  return cleanParting(head, keepLeastBend(head.surface, smooth(evenly(head, offset), 1)))
}

function hairlineBetween({ hairline }: Head, fromMm: number, toMm: number): SurfacePath {
  const steps = Math.max(2, Math.ceil(Math.abs(toMm - fromMm) / handStepMm))
  return Array.from({ length: steps + 1 }, (_, i) =>
    hairline.pointAlong(fromMm + ((toMm - fromMm) * i) / steps),
  )
}

/** The same parting moved back by so many mm, away from the face; a negative distance moves it forward. */
export const partingBehind = (head: Head, parting: SurfacePath, behindMm: number): Parted =>
  cleanParting(head, offsetPath(head.surface, parting, -frontSide(parting, head) * behindMm))

/** The parting along a line: what of it lies inside the hairline, at even steps, its ends where they are. */
export function cleanParting(head: Head, line: SurfacePath): Parted {
  if (line.length < 2) return { refused: "too-short" }
  const inside = longestRunInside(head.hairline, measurePath(head.surface, line).points)
  if (inside.length < 2) return { refused: "outside-hairline" }
  const measured = measurePath(head.surface, inside)
  if (measured.lengthMm < shortestMm) return { refused: "too-short" }
  const parting = resampleMeasured(measured, countFor(measured, spacingMm, mostPoints))
  return crossesItself(parting) ? { refused: "crosses-itself" } : { parting }
}

const countFor = ({ lengthMm }: MeasuredPath, stepMm: number, most: number) =>
  Math.min(most, Math.max(2, Math.ceil(lengthMm / stepMm) + 1))

const sectionPieces = 64

function planeSection({ surface }: Head, from: SurfacePoint, to: SurfacePoint): SurfacePath {
  const { centre } = surface
  const [a, b] = [from, to].map((at) => normalize(subtract(surface.pointAt(at), centre)))
  const inner = Array.from({ length: sectionPieces - 1 }, (_, i) => {
    const share = (i + 1) / sectionPieces
    const chord = add(scale(a, 1 - share), scale(b, share))
    return surface.toSurface(add(centre, chord))
  })
  return [from, ...inner, to]
}
