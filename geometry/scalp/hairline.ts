import { mirrored, type SurfacePoint } from "../surface/frames"
import type { Surface } from "../surface/surface"
import { lengthMm, mirror } from "../surface/surfacePath"
import type { Vec3 } from "../surface/vec3"
import { type HairlineControl, type HairlineHalf, hairlineHalf } from "./hairlineHalf"
import type { HairlineForm, LandmarkName } from "./hairlineLandmarks"

export type { HairlineControl } from "./hairlineHalf"

/** The head's own left and right. */
export const headSides = ["left", "right"] as const
export type HeadSide = (typeof headSides)[number]

/** The side of a place of the scalp map; the midline counts as the right. */
export const headSideOf = ([u]: SurfacePoint): HeadSide => (u < 0 ? "left" : "right")

/** A place told by the hairline: mm along it from centre front, positive to the head's right, and mm inside it. */
export type HairlineCoordinates = { alongMm: number; behindMm: number }

/** The edge of the hair: a closed line that crosses the midline at centre front and at centre nape. */
export type Hairline = {
  form: HairlineForm
  /** From centre front to the head's right, round the nape and back, at steps even on each side; the first is not repeated. */
  points: readonly SurfacePoint[]
  lengthMm: number
  contains(at: SurfacePoint): boolean
  coordinates(at: SurfacePoint): HairlineCoordinates
  /** The place so far along; once round is lengthMm. */
  pointAlong(alongMm: number): SurfacePoint
}

/** One side of a hairline, mm along it from centre front. */
export type HairlineSide = {
  landmarks: ReadonlyMap<LandmarkName, SurfacePoint>
  lengthMm: number
  /** Up to here it borders the face: centre front to sideburn. */
  faceReachMm: number
  landmarkAlongMm(name: LandmarkName): number
}

/** A hairline that knows its landmarks. */
export type LandmarkedHairline = Hairline & {
  /** The named places on the head's right; those of either side are in `sides`. */
  landmarks: ReadonlyMap<LandmarkName, SurfacePoint>
  sides: Readonly<Record<HeadSide, HairlineSide>>
  /** Whether either side is the exact mirror image of the other. */
  isEven: boolean
  /** The straight way to the hairline from a point of the scalp in the head frame, mm; never negative. */
  distanceMm(point: Vec3): number
}

/**
 * The hairline through control points from centre front to centre nape, both on the midline: those of the head's
 * right, and those of its left folded over to the right. Left out, the left is the exact mirror of the right.
 */
export function makeHairline(
  surface: Surface,
  form: HairlineForm,
  rightControls: readonly HairlineControl[],
  leftControls: readonly HairlineControl[] = rightControls,
): LandmarkedHairline {
  const right = hairlineHalf(surface, rightControls, leftControls)
  const left = leftControls === rightControls ? right : hairlineHalf(surface, leftControls, rightControls)
  const halves = { left, right }
  const contains = ([u, v]: SurfacePoint) => halves[u < 0 ? "left" : "right"].contains(Math.abs(u), v)
  return {
    form,
    points: [...right.points, ...mirror(left.points.slice(1, -1)).toReversed()],
    lengthMm: left.lengthMm + right.lengthMm,
    landmarks: right.landmarks,
    isEven: left === right,
    sides: { left: sideOf(left, mirrored), right: sideOf(right, (at) => at) },
    contains,
    distanceMm: ([x, y, z]) => nearestOfHalves(halves, x < 0 ? "left" : "right", [Math.abs(x), y, z]).chordMm,
    coordinates: (at) => tellPlace(surface, halves, at, contains(at)),
    pointAlong: (alongMm) => placeAlong(halves, alongMm),
  }
}

type Halves = Readonly<Record<HeadSide, HairlineHalf>>
const otherSide = { left: "right", right: "left" } as const satisfies Record<HeadSide, HeadSide>

function sideOf(half: HairlineHalf, unfold: (at: SurfacePoint) => SurfacePoint): HairlineSide {
  const { landmarks, lengthMm, landmarkAlongMm } = half
  return {
    landmarks: new Map(Array.from(landmarks, ([name, at]) => [name, unfold(at)])),
    lengthMm,
    faceReachMm: landmarkAlongMm("sideburn"),
    landmarkAlongMm,
  }
}

/** The nearest place to a point folded over to the right; the other side is asked where it may be nearer than its own. */
function nearestOfHalves(halves: Halves, side: HeadSide, [x, y, z]: Vec3) {
  const own = { side, ...halves[side].nearest([x, y, z]) }
  if (halves.left === halves.right || own.chordMm <= x) return own
  const other = { side: otherSide[side], ...halves[otherSide[side]].nearest([-x, y, z]) }
  return other.chordMm < own.chordMm ? other : own
}

function tellPlace(
  surface: Surface,
  halves: Halves,
  at: SurfacePoint,
  isInside: boolean,
): HairlineCoordinates {
  const own = headSideOf(at)
  const folded = own === "left" ? mirrored(at) : at
  const { side, alongMm } = nearestOfHalves(halves, own, surface.pointAt(folded))
  const onHalf = halves[side].pointAlong(alongMm)
  const wayMm = lengthMm(surface, [side === own ? onHalf : mirrored(onHalf), folded])
  return { alongMm: side === "left" ? -alongMm : alongMm, behindMm: isInside ? wayMm : -wayMm }
}

function placeAlong({ left, right }: Halves, alongMm: number): SurfacePoint {
  const round = left.lengthMm + right.lengthMm
  const turned = alongMm - round * Math.round((alongMm - (right.lengthMm - left.lengthMm) / 2) / round)
  return turned < 0 ? mirrored(left.pointAlong(-turned)) : right.pointAlong(turned)
}
