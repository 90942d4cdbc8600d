import { type HeadPoint, headPoint, type SurfacePoint, surfacePoint } from "./frames"
import { add, cross, divide, dot, length, multiply, normalize, scale, subtract, type Vec3 } from "./vec3"

/**
 * A smooth closed surface seen from a centre inside it: one radius for each direction.
 * All lengths mm in the head frame (x right, y front, z up).
 */
export type Surface = {
  /** The point of the surface in the direction of the map point. */
  pointAt(at: SurfacePoint): HeadPoint
  /** The two tangents d(point)/du and d(point)/dv, mm a radian. */
  tangentsAt(at: SurfacePoint): readonly [Vec3, Vec3]
  /** The point and both tangents at a map point, nine numbers in that order; it writes them, for it is asked most of all. */
  frameAt(u: number, v: number, into: Float64Array): void
  /** The map point in whose direction, seen from the centre, the given point lies. */
  toSurface(point: Vec3): SurfacePoint
  /** Largest distance of the surface from the centre, mm: bounds a ray search. */
  reachMm: number
  centre: HeadPoint
}

/** What a surface is made from: a radius in mm for each map point of the unscaled shape, and its two slopes; it writes the three. */
export type RadiusField = (u: number, v: number, into: Float64Array) => void

/** How the unscaled shape sits in space: centre of directions (mm) and tilt of the map's pole behind straight up. */
export type MapFrame = { centre: Vec3; poleTilt: number }

/** Scale one radius field in three axes. `axes` are factors on x, y and z about the frame's origin. */
export function makeSurface(radiusAt: RadiusField, frame: MapFrame, axes: Vec3, reachMm: number): Surface {
  const directions = mapDirections(frame.poleTilt)
  const centre = multiply(frame.centre, axes)
  const [sinTilt, cosTilt] = [Math.sin(frame.poleTilt), Math.cos(frame.poleTilt)]
  const [cx, cy, cz] = centre
  const [ax, ay, az] = axes
  const met = new Float64Array(3)
  const asked = new Float64Array(9)
  const frameAt = (u: number, v: number, into: Float64Array) => {
    radiusAt(u, v, met)
    const radius = met[0]
    const radiusU = met[1]
    const radiusV = met[2]
    const angle = Math.sqrt(u * u + v * v)
    const [sin, cos] = [Math.sin(angle), Math.cos(angle)]
    const ratio = sinc(angle, sin)
    const slope = sincSlopeOverAngle(angle, sin, cos)
    const [right, ahead] = [u * ratio, v * ratio]
    const [dy, dz] = [ahead * cosTilt - cos * sinTilt, ahead * sinTilt + cos * cosTilt]
    into[0] = cx + right * radius * ax
    into[1] = cy + dy * radius * ay
    into[2] = cz + dz * radius * az
    const across = u * v * slope
    const [aheadV, up, upV] = [ratio + v * v * slope, -u * ratio, -v * ratio]
    into[3] = (right * radiusU + (ratio + u * u * slope) * radius) * ax
    into[4] = (dy * radiusU + (across * cosTilt - up * sinTilt) * radius) * ay
    into[5] = (dz * radiusU + (across * sinTilt + up * cosTilt) * radius) * az
    into[6] = (right * radiusV + across * radius) * ax
    into[7] = (dy * radiusV + (aheadV * cosTilt - upV * sinTilt) * radius) * ay
    into[8] = (dz * radiusV + (aheadV * sinTilt + upV * cosTilt) * radius) * az
  }
  return {
    centre: headPoint(...centre),
    reachMm: reachMm * Math.max(...axes),
    pointAt([u, v]) {
      frameAt(u, v, asked)
      return headPoint(asked[0], asked[1], asked[2])
    },
    tangentsAt([u, v]) {
      frameAt(u, v, asked)
      return [
        [asked[3], asked[4], asked[5]],
        [asked[6], asked[7], asked[8]],
      ]
    },
    frameAt,
    toSurface: (point) => directions.inverse(divide(subtract(point, centre), axes)),
  }
}

/** A sphere about the origin, mm: the surface with closed forms that tests compare against. */
export const sphereSurface = (radiusMm: number): Surface =>
  makeSurface(
    (_, __, into) => into.set([radiusMm, 0, 0]),
    { centre: [0, 0, 0], poleTilt: 0 },
    [1, 1, 1],
    radiusMm,
  )

/** Outward unit normal. */
export function normalAt(surface: Surface, at: SurfacePoint): Vec3 {
  const [along, across] = surface.tangentsAt(at)
  return normalize(cross(along, across))
}

/** The first place where a ray from outside meets the surface, or null. `direction` need not be a unit vector. */
export function firstHit(surface: Surface, origin: Vec3, direction: Vec3): SurfacePoint | null {
  const along = normalize(direction)
  const closest = dot(subtract(surface.centre, origin), along)
  const heightAt = (t: number) => heightAbove(surface, add(origin, scale(along, t)))
  const step = surface.reachMm / 40
  let outside = closest - surface.reachMm
  for (let t = outside + step; t < closest + surface.reachMm; t += step) {
    if (heightAt(t) < 0) return surface.toSurface(add(origin, scale(along, bisect(heightAt, outside, t))))
    outside = t
  }
  return null
}

/** Distance of a point beyond the surface along its own direction from the centre, mm; negative inside. */
export const heightAbove = (surface: Surface, point: Vec3) =>
  length(subtract(point, surface.centre)) -
  length(subtract(surface.pointAt(surface.toSurface(point)), surface.centre))

function bisect(heightAt: (t: number) => number, outside: number, inside: number) {
  let [high, low] = [outside, inside]
  for (let i = 0; i < 24; i++) {
    const middle = (high + low) / 2
    if (heightAt(middle) > 0) high = middle
    else low = middle
  }
  return (high + low) / 2
}

/** Directions of the azimuthal equidistant map: unit vectors, and the way back. */
export function mapDirections(poleTilt: number) {
  const [sinTilt, cosTilt] = [Math.sin(poleTilt), Math.cos(poleTilt)]
  const pole: Vec3 = [0, -sinTilt, cosTilt]
  const front: Vec3 = [0, cosTilt, sinTilt]
  const compose = (right: number, forward: number, up: number): Vec3 => [
    right,
    forward * front[1] + up * pole[1],
    forward * front[2] + up * pole[2],
  ]
  return {
    at(u: number, v: number): Vec3 {
      const angle = Math.sqrt(u * u + v * v)
      const ratio = sinc(angle, Math.sin(angle))
      return compose(u * ratio, v * ratio, Math.cos(angle))
    },
    inverse(direction: Vec3): SurfacePoint {
      const [x, y, z] = normalize(direction)
      const forward = y * front[1] + z * front[2]
      const up = y * pole[1] + z * pole[2]
      const across = Math.sqrt(x * x + forward * forward)
      if (across < 1e-12) return surfacePoint(0, 0)
      const angle = Math.atan2(across, up)
      return surfacePoint((x / across) * angle, (forward / across) * angle)
    },
  }
}

const sinc = (angle: number, sin: number) => (angle < 1e-4 ? 1 - (angle * angle) / 6 : sin / angle)

/** (d sinc / d angle) / angle, finite at zero, from the angle, its sine and its cosine. */
const sincSlopeOverAngle = (angle: number, sin: number, cos: number) =>
  angle < 1e-2 ? -1 / 3 + (angle * angle) / 30 : (angle * cos - sin) / (angle * angle * angle)
