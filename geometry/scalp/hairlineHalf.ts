import { mirrored, type SurfacePoint, surfacePoint } from "../surface/frames"
import { type Nearest, nearestOnPath } from "../surface/nearestOnPath"
import { splineThrough } from "../surface/spline"
import type { Surface } from "../surface/surface"
import { type MeasuredPath, measurePath, pointAlong, resample } from "../surface/surfacePath"
import type { Vec3 } from "../surface/vec3"
import type { LandmarkName } from "./hairlineLandmarks"
import { insideHalf } from "./insideHalf"

/** A place the hairline runs through, on the head's right or folded over to it. */
export type HairlineControl = { name?: LandmarkName; at: SurfacePoint }

/** One side of the hairline, folded over to the head's right, from centre front to centre nape; lengths in mm. */
export type HairlineHalf = {
  points: readonly SurfacePoint[]
  lengthMm: number
  landmarks: ReadonlyMap<LandmarkName, SurfacePoint>
  /** How far along this half a landmark lies; an unknown one counts as its end. */
  landmarkAlongMm(name: LandmarkName): number
  contains(u: number, v: number): boolean
  nearest(point: Vec3): Nearest
  pointAlong(alongMm: number): SurfacePoint
}

/** Pieces of a half, all of one length. */
export const stepsASide = 130
const splinePieces = 24

/** The half through its controls; those of the other side, folded over too, steer it where the two meet. */
export function hairlineHalf(
  surface: Surface,
  controls: readonly HairlineControl[],
  others: readonly HairlineControl[],
): HairlineHalf {
  const points = lineThrough(surface, controls, others)
  const measured: MeasuredPath = measurePath(surface, points)
  const nearest = nearestOnPath(surface, measured)
  const landmarks = new Map(controls.flatMap(({ name, at }) => (name ? [[name, at] as const] : [])))
  const along = new Map([...landmarks].map(([name, at]) => [name, nearest(surface.pointAt(at)).alongMm]))
  return {
    points,
    lengthMm: measured.lengthMm,
    landmarks,
    landmarkAlongMm: (name) => along.get(name) ?? measured.lengthMm,
    contains: insideHalf(points),
    nearest,
    pointAlong: (alongMm) => pointAlong(measured, alongMm),
  }
}

function lineThrough(
  surface: Surface,
  controls: readonly HairlineControl[],
  others: readonly HairlineControl[],
): readonly SurfacePoint[] {
  const last = others.length - 1
  const steered = [mirrored(others[1].at), ...controls.map(({ at }) => at), mirrored(others[last - 1].at)]
  const line = resample(surface, splineThrough(steered, splinePieces), stepsASide + 1)
  const onMidline = ([, v]: SurfacePoint) => surfacePoint(0, v)
  return [onMidline(line[0]), ...line.slice(1, -1), onMidline(line[stepsASide])]
}
