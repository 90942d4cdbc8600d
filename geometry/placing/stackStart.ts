import { frontSide, type Side } from "../scalp/frontSide"
import type { Head } from "../scalp/head"
import type { Band } from "../section/section"
import { extendPath } from "../surface/extendPath"
import type { SurfacePoint } from "../surface/frames"
import { type Rib, walkRibs } from "../surface/ribs"
import { smoothLine } from "../surface/spline"
import { leftOf, measurePath, pointAlong } from "../surface/surfacePath"

/** How a stack goes on behind its first band; mm on the scalp. */
export type StackWay = {
  /** Keep the distance of the hairline, or of the first parting. */
  follow: "hairline" | "parting"
  /** Hair left between each band and the next. */
  gapMm: number
  /** How far each second parting is moved along, like bricks; negative toward the first point. */
  shiftMm: number
  /** How deep the bands behind the first are, one after the other, over and over. */
  depthsMm: readonly number[]
  /** A parting shorter than this ends the stack. */
  shortestMm: number
}

/** Where the ribs of a stack stand when it begins, on the first parting; to which side they walk; how long a parting is, mm. */
export type StackStart = {
  ribs: Rib[]
  side: Side
  lengthMm: number
  /** Whether a band lies on the side of its parting to which the stack goes. */
  takesAhead: boolean
}

/** A parting that strays less than this from its distance keeps the hairline's distance by keeping its own, mm. */
const straysMm = 1

export function stackStart(head: Head, first: Band, way: StackWay): StackStart {
  const front = frontSide(first.parting, head)
  const edge = way.follow === "hairline" ? edgeOf(head, first) : null
  const side = edge?.side ?? (front === 1 ? -1 : 1)
  const { placeAt, lengthMm } = edge && edge.straysMm > straysMm ? edge : lineOf(head, first, way)
  const homesMm = homes(lengthMm, way.shiftMm)
  const places = homesMm.map(placeAt)
  const ribs = places.map((at, i) => ({ at, heading: leftOf(head.surface, places, i), homeMm: homesMm[i] }))
  return {
    ribs:
      edge?.placeAt === placeAt
        ? walkRibs(head.surface, ribs, side * edge.behindMm, head.hairline.distanceMm)
        : ribs,
    side,
    lengthMm,
    takesAhead: (first.taken === "front" ? front : -front) === side,
  }
}

/** A line from which ribs set out: the place so far along it, and how long the first parting's share of it is, mm. */
type Line = { placeAt(alongMm: number): SurfacePoint; lengthMm: number }

function lineOf({ surface }: Head, first: Band, { shiftMm }: StackWay): Line {
  const smooth = smoothLine(first.parting, piecesEach)
  const [beforeMm, pastMm] = [Math.max(0, -shiftMm) + spacingMm, Math.max(0, shiftMm) + spacingMm]
  const measured = measurePath(surface, extendPath(surface, smooth, beforeMm, pastMm))
  return {
    placeAt: (alongMm) => pointAlong(measured, alongMm + beforeMm),
    lengthMm: measured.lengthMm - beforeMm - pastMm,
  }
}

const piecesEach = 4

/** The hairline beside a parting: on which side of it the hair is, the farthest the parting lies behind it, and how much it strays, mm. */
type Edge = Line & { side: Side; behindMm: number; straysMm: number }

function edgeOf({ hairline }: Head, { parting }: Band): Edge {
  const places = parting.map(hairline.coordinates)
  const fromMm = places[0].alongMm
  const wayMm = places[places.length - 1].alongMm - fromMm
  const shorterMm = wayMm - hairline.lengthMm * Math.round(wayMm / hairline.lengthMm)
  const sense = shorterMm < 0 ? -1 : 1
  const behindMm = Math.max(...places.map((place) => place.behindMm))
  return {
    placeAt: (alongMm) => hairline.pointAlong(fromMm + sense * alongMm),
    side: sense === 1 ? -1 : 1,
    lengthMm: Math.abs(shorterMm),
    behindMm,
    straysMm: behindMm - Math.min(...places.map((place) => place.behindMm)),
  }
}

/** Ribs stand at most this far apart, mm. */
const spacingMm = 4

/** Where ribs set out along a line, mm: at both ends of the first parting and of the ones moved along, evenly between, and one past each end, by which the last can tell its way. */
function homes(lengthMm: number, shiftMm: number): number[] {
  const ends = [...new Set([0, lengthMm, shiftMm, lengthMm + shiftMm])].sort((a, b) => a - b)
  const marks = [ends[0] - spacingMm, ...ends, ends[ends.length - 1] + spacingMm]
  return marks.flatMap((toMm, i) => {
    if (i === 0) return [toMm]
    const fromMm = marks[i - 1]
    const steps = Math.ceil((toMm - fromMm) / spacingMm)
    return Array.from({ length: steps }, (_, step) =>
      step === steps - 1 ? toMm : fromMm + ((toMm - fromMm) * (step + 1)) / steps,
    )
  })
}
