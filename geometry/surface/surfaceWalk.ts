import { type SurfacePoint, surfacePoint } from "./frames"
import type { Surface } from "./surface"
import { add, cross, normalize, scale, type Vec3 } from "./vec3"

/** Where a walk over the surface stands, and its heading: a unit vector of the head frame. */
export type Walker = { at: SurfacePoint; heading: Vec3 }

/** A walker that is moved in place: its map point, its heading, and the surface there as `Surface.frameAt` writes it. */
export type Moving = { u: number; v: number; x: number; y: number; z: number; frame: Float64Array }

export const newMoving = (): Moving => ({ u: 0, v: 0, x: 0, y: 0, z: 0, frame: new Float64Array(9) })

const strideMm = 5

/** Walk straight ahead over the surface (a geodesic) for a length in mm; a negative length walks backwards. */
export function walk(surface: Surface, { at: [u, v], heading: [x, y, z] }: Walker, lengthMm: number): Walker {
  const moving = { u, v, x, y, z, frame: new Float64Array(9) }
  surface.frameAt(u, v, moving.frame)
  walkOn(surface, moving, lengthMm)
  return { at: surfacePoint(moving.u, moving.v), heading: [moving.x, moving.y, moving.z] }
}

/** Move a walker straight ahead by so many mm. */
export function walkOn(surface: Surface, moving: Moving, lengthMm: number) {
  const strides = Math.max(1, Math.ceil(Math.abs(lengthMm) / strideMm))
  for (let i = 0; i < strides; i++) stride(surface, moving, lengthMm / strides)
}

/** Turn a walker square to a direction of the map, to the left as seen from outside the head, or for a side of -1 to the right. */
export function faceSideways(moving: Moving, du: number, dv: number, side: number) {
  const { frame } = moving
  const nx = frame[4] * frame[8] - frame[5] * frame[7]
  const ny = frame[5] * frame[6] - frame[3] * frame[8]
  const nz = frame[3] * frame[7] - frame[4] * frame[6]
  const ax = du * frame[3] + dv * frame[6]
  const ay = du * frame[4] + dv * frame[7]
  const az = du * frame[5] + dv * frame[8]
  const [x, y, z] = [ny * az - nz * ay, nz * ax - nx * az, nx * ay - ny * ax]
  const perLength = side / Math.sqrt(x * x + y * y + z * z)
  moving.x = x * perLength
  moving.y = y * perLength
  moving.z = z * perLength
}

/** The heading square to a direction of the map, to the left as seen from outside the head. */
export function headingLeft(surface: Surface, at: SurfacePoint, du: number, dv: number): Vec3 {
  const [along, across] = surface.tangentsAt(at)
  const ahead = add(scale(along, du), scale(across, dv))
  return normalize(cross(cross(along, across), ahead))
}

/** One midpoint step; the error grows with the square of its length and is 0.01 % at 5 mm. */
function stride(surface: Surface, moving: Moving, mm: number) {
  const { u, v, frame } = moving
  const ahead = speedOf(moving)
  surface.frameAt(u + (ahead.u * mm) / 2, v + (ahead.v * mm) / 2, frame)
  const middle = speedOf(moving)
  moving.x = frame[3] * middle.u + frame[6] * middle.v
  moving.y = frame[4] * middle.u + frame[7] * middle.v
  moving.z = frame[5] * middle.u + frame[8] * middle.v
  moving.u = u + middle.u * mm
  moving.v = v + middle.v * mm
  surface.frameAt(moving.u, moving.v, frame)
}

/** The speed in the map, radians a mm, of a heading laid down on the surface of its frame. */
function speedOf({ x, y, z, frame }: Moving): { u: number; v: number } {
  const e = frame[3] * frame[3] + frame[4] * frame[4] + frame[5] * frame[5]
  const f = frame[3] * frame[6] + frame[4] * frame[7] + frame[5] * frame[8]
  const g = frame[6] * frame[6] + frame[7] * frame[7] + frame[8] * frame[8]
  const p = x * frame[3] + y * frame[4] + z * frame[5]
  const q = x * frame[6] + y * frame[7] + z * frame[8]
  const u = (p * g - q * f) / (e * g - f * f)
  const v = (q * e - p * f) / (e * g - f * f)
  const speed = Math.sqrt(u * u * e + 2 * u * v * f + v * v * g)
  return { u: u / speed, v: v / speed }
}
