import type { Hairline } from "../scalp/hairline"
import type { SurfacePoint } from "../surface/frames"
import { normalAt, type Surface } from "../surface/surface"
import { lengthMm, resample, type SurfacePath } from "../surface/surfacePath"
import { add, cross, dot, normalize, scale, subtract, type Vec3 } from "../surface/vec3"

export type DirectionName =
  | "parallel to hairline"
  | "horizontal"
  | "vertical"
  | "diagonal forward"
  | "diagonal back"

/** The trade's word for how a parting runs, and its angle from the horizontal of the scalp there, degrees 0 to 90. */
export type Direction = { name: DirectionName; degrees: number }

/** What is asked of a hairline: how far behind it a place lies, mm. */
type Along = Pick<Hairline, "coordinates">

/** A parting this near to the horizontal or the vertical, degrees, is called by that name. */
const leaning = 15
/** A parting keeps to the hairline when it starts this near, mm, and strays less than this share of its length. */
const nearMm = 40
const strays = 0.12

/**
 * How a parting runs on the head, from its first point to its last: diagonal forward drops toward the face, diagonal
 * back drops away from it.
 */
export function directionOf(parting: SurfacePath, surface: Surface, hairline: Along): Direction {
  const plain = plainDirection(surface, parting[0], parting[parting.length - 1])
  return followsHairline(parting, surface, hairline) ? { ...plain, name: "parallel to hairline" } : plain
}

/** How the line from one place to another runs, whatever lies beside it. */
export function plainDirection(surface: Surface, from: SurfacePoint, to: SurfacePoint): Direction {
  const degrees = steepnessOf(surface, from, to)
  if (degrees < leaning) return { name: "horizontal", degrees }
  if (degrees > 90 - leaning) return { name: "vertical", degrees }
  return { name: dropsForward(surface, from, to) ? "diagonal forward" : "diagonal back", degrees }
}

/** Angle between the line from one place to another and the horizontal of the scalp midway, degrees 0 to 90. */
export function steepnessOf(surface: Surface, from: SurfacePoint, to: SurfacePoint): number {
  const bearing = bearingOf(surface, from, to)
  return Math.min(bearing, 180 - bearing)
}

/**
 * The bearing of the line between two places, degrees from 0 up to 180: counted on the scalp midway from its
 * horizontal, anticlockwise seen from outside; 90 runs straight up and down. Which end is first makes no difference.
 */
export function bearingOf(surface: Surface, from: SurfacePoint, to: SurfacePoint): number {
  const [start, end] = [surface.pointAt(from), surface.pointAt(to)]
  const normal = normalAt(surface, surface.toSurface(scale(add(start, end), 0.5)))
  const level = normalize(cross(upAt(normal), normal))
  const chord = subtract(end, start)
  const degrees = (Math.atan2(dot(chord, cross(normal, level)), dot(chord, level)) * 180) / Math.PI
  return ((degrees % 180) + 180) % 180
}

/** Where the scalp leans less than this from flat, on top of the head, a parting across is called horizontal. */
const flat = Math.sin((25 * Math.PI) / 180)

/** Uphill is upward, and on the flat of the head backward, away from the face. */
const upAt = ([x, y]: Vec3): Vec3 => (Math.hypot(x, y) < flat ? [0, -1, 0] : [0, 0, 1])

function dropsForward(surface: Surface, from: SurfacePoint, to: SurfacePoint): boolean {
  const [, forward, rise] = subtract(surface.pointAt(to), surface.pointAt(from))
  return forward * rise < 0
}

/** Whether a parting near the hairline keeps its distance from it. */
export function followsHairline(parting: SurfacePath, surface: Surface, hairline: Along): boolean {
  const behindMm = resample(surface, parting, 9).map((at) => hairline.coordinates(at).behindMm)
  const nearest = Math.min(...behindMm)
  return (
    nearest < nearMm && Math.max(...behindMm) - nearest < Math.max(3, strays * lengthMm(surface, parting))
  )
}
