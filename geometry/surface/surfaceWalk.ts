import { type SurfacePoint, surfacePoint } from "./frames"
import type { Surface } from "./surface"
import { add, cross, dot, normalize, scale, type Vec3 } from "./vec3"

/** Where a walk over the surface stands, and its heading: a unit vector of the head frame. */
export type Walker = { at: SurfacePoint; heading: Vec3 }

const strideMm = 5

/** Walk straight ahead over the surface (a geodesic) for a length in mm; a negative length walks backwards. */
export function walk(surface: Surface, start: Walker, lengthMm: number): Walker {
  const strides = Math.max(1, Math.ceil(Math.abs(lengthMm) / strideMm))
  let walker = start
  for (let i = 0; i < strides; i++) walker = stride(surface, walker, lengthMm / strides)
  return walker
}

/** The heading square to a direction of the map, to the left as seen from outside the head. */
export function headingLeft(surface: Surface, at: SurfacePoint, du: number, dv: number): Vec3 {
  const [along, across] = surface.tangentsAt(at)
  const ahead = add(scale(along, du), scale(across, dv))
  return normalize(cross(cross(along, across), ahead))
}

/** One midpoint step; the error grows with the square of its length and is 0.01 % at 5 mm. */
function stride(surface: Surface, { at, heading }: Walker, mm: number): Walker {
  const middle = follow(surface, at, at, heading, mm / 2)
  return follow(surface, at, middle.at, heading, mm)
}

/** Leave `from` with the speed that the heading, laid down on the surface at `sample`, has in the map. */
function follow(
  surface: Surface,
  from: SurfacePoint,
  sample: SurfacePoint,
  heading: Vec3,
  mm: number,
): Walker {
  const [along, across] = surface.tangentsAt(sample)
  const [e, f, g] = [dot(along, along), dot(along, across), dot(across, across)]
  const [p, q] = [dot(heading, along), dot(heading, across)]
  const u = (p * g - q * f) / (e * g - f * f)
  const v = (q * e - p * f) / (e * g - f * f)
  const speed = Math.sqrt(u * u * e + 2 * u * v * f + v * v * g)
  const laid = scale(add(scale(along, u), scale(across, v)), 1 / speed)
  return { at: surfacePoint(from[0] + (u * mm) / speed, from[1] + (v * mm) / speed), heading: laid }
}
