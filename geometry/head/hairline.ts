import { mirrored, type SurfacePoint, surfacePoint } from "../frames"
import { nearestOnPath } from "../nearestOnPath"
import { splineThrough } from "../spline"
import { lengthMm, type MeasuredPath, measurePath, mirror, pointAlong, resample } from "../surfacePath"
import type { Vec3 } from "../vec3"
import type { HairlineForm, LandmarkName } from "./hairlineLandmarks"
import { insideHalf } from "./insideHalf"
import type { Surface } from "./surface"

/** A place told by the hairline: mm along it from centre front, positive to the head's right, and mm inside it. */
export type HairlineCoordinates = { alongMm: number; behindMm: number }

/** The edge of the hair: a closed line, the left half the exact mirror of the right. */
export type Hairline = {
  form: HairlineForm
  /** From centre front to the head's right, round the nape and back, at even steps; the first is not repeated. */
  points: readonly SurfacePoint[]
  lengthMm: number
  contains(at: SurfacePoint): boolean
  coordinates(at: SurfacePoint): HairlineCoordinates
  /** The place so far along; once round is lengthMm. */
  pointAlong(alongMm: number): SurfacePoint
}

/** A hairline that knows its landmarks. */
export type LandmarkedHairline = Hairline & {
  /** The named places on the head's right. */
  landmarks: ReadonlyMap<LandmarkName, SurfacePoint>
  /** From -this to this along the hairline it borders the face: centre front to sideburn. */
  faceReachMm: number
  /** The straight way to the hairline from a point of the scalp in the head frame, mm; never negative. */
  distanceMm(point: Vec3): number
}

export type HairlineControl = { name?: LandmarkName; at: SurfacePoint }

const stepsASide = 130
const splinePieces = 24

/** The hairline through control points of the head's right side, from centre front to centre nape, both on the midline. */
export function makeHairline(
  surface: Surface,
  form: HairlineForm,
  controls: readonly HairlineControl[],
): LandmarkedHairline {
  const right = rightHalf(
    surface,
    controls.map(({ at }) => at),
  )
  const measured = measurePath(surface, right)
  const halfMm = measured.lengthMm
  const nearest = nearestOnPath(surface, measured)
  const inside = insideHalf(right)
  const landmarks = new Map(controls.flatMap(({ name, at }) => (name ? [[name, at] as const] : [])))

  const contains = ([u, v]: SurfacePoint) => inside(Math.abs(u), v)
  const coordinates = (at: SurfacePoint): HairlineCoordinates => {
    const onRight = at[0] < 0 ? mirrored(at) : at
    const { alongMm } = nearest(surface.pointAt(onRight))
    const wayMm = lengthMm(surface, [pointAlong(measured, alongMm), onRight])
    return { alongMm: at[0] < 0 ? -alongMm : alongMm, behindMm: contains(at) ? wayMm : -wayMm }
  }
  const sideburn = landmarks.get("sideburn")
  return {
    form,
    points: [...right, ...mirror(right.slice(1, -1)).toReversed()],
    lengthMm: 2 * halfMm,
    landmarks,
    faceReachMm: sideburn ? coordinates(sideburn).alongMm : halfMm,
    contains,
    distanceMm: ([x, y, z]) => nearest([Math.abs(x), y, z]).chordMm,
    coordinates,
    pointAlong: (alongMm) => onEitherSide(measured, alongMm),
  }
}

function rightHalf(surface: Surface, controls: readonly SurfacePoint[]): readonly SurfacePoint[] {
  const last = controls.length - 1
  const steered = [mirrored(controls[1]), ...controls, mirrored(controls[last - 1])]
  const line = resample(surface, splineThrough(steered, splinePieces), stepsASide + 1)
  const onMidline = ([, v]: SurfacePoint) => surfacePoint(0, v)
  return [onMidline(line[0]), ...line.slice(1, -1), onMidline(line[stepsASide])]
}

function onEitherSide(half: MeasuredPath, alongMm: number): SurfacePoint {
  const round = 2 * half.lengthMm
  const turned = alongMm - round * Math.round(alongMm / round)
  const onRight = pointAlong(half, Math.abs(turned))
  return turned < 0 ? mirrored(onRight) : onRight
}
