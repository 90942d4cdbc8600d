import type { SurfacePoint } from "./frames"
import type { Hairline } from "./head/hairline"
import type { Surface } from "./head/surface"
import { lengthMm, resample } from "./surfacePath"

export type DirectionName =
  | "parallel to hairline"
  | "horizontal"
  | "vertical"
  | "diagonal forward"
  | "diagonal back"

/** Steepness from the horizontal, degrees 0 to 90, and the trade's word for it. */
export type Direction = { name: DirectionName; degrees: number }

/** What is asked of a hairline: how far behind it a place lies, mm. */
type Along = Pick<Hairline, "coordinates">

/** A parting this near to the horizontal or the vertical, degrees, is called by that name. */
const leaning = 15
/** A parting keeps to the hairline when it starts this near, mm, and strays less than this share of its length. */
const nearMm = 40
const strays = 0.12

/**
 * How a parting runs on the head: diagonal forward drops toward the face, diagonal back drops away from it.
 * Drop (mm along z) over length (mm on the surface) from its first point to its last.
 */
export function directionOf(parting: readonly SurfacePoint[], surface: Surface, hairline: Along): Direction {
  const [start, end] = [parting[0], parting[parting.length - 1]].map(surface.pointAt)
  const rise = end[2] - start[2]
  const share = Math.min(1, Math.abs(rise) / (lengthMm(surface, parting) || 1))
  const degrees = (Math.asin(share) * 180) / Math.PI
  const dropsForward = (end[1] - start[1]) * rise < 0
  if (followsHairline(parting, surface, hairline)) return { name: "parallel to hairline", degrees }
  if (degrees < leaning) return { name: "horizontal", degrees }
  if (degrees > 90 - leaning) return { name: "vertical", degrees }
  return { name: dropsForward ? "diagonal forward" : "diagonal back", degrees }
}

function followsHairline(parting: readonly SurfacePoint[], surface: Surface, hairline: Along): boolean {
  const behindMm = resample(surface, parting, 9).map((at) => hairline.coordinates(at).behindMm)
  const nearest = Math.min(...behindMm)
  return (
    nearest < nearMm && Math.max(...behindMm) - nearest < Math.max(3, strays * lengthMm(surface, parting))
  )
}
