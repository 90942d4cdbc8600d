import { crossesItself } from "../surface/crossesItself"
import type { SurfacePoint } from "../surface/frames"
import { divide, type Vec3 } from "../surface/vec3"
import type { HeadSide } from "./hairline"
import type { Head } from "./head"
import { mapReach } from "./headSurface"

/** What makes a line impossible as the edge of the hair. */
export type HairlineFault = "crosses-itself" | "over-ear" | "on-face" | "off-scalp" | "across-middle"

/** The first fault of a head's hairline and the side it is on, or null. */
export function hairlineFault(head: Head): { fault: HairlineFault; side: HeadSide } | null {
  const { points } = head.hairline
  const half = points.length / 2
  const right = points.slice(0, half + 1)
  const left = [points[0], ...points.slice(half).toReversed()]
  const [onRight, onLeft] = [faultOf(head, right, 1), faultOf(head, left, -1)]
  if (onRight) return { fault: onRight, side: "right" }
  return onLeft && { fault: onLeft, side: "left" }
}

/** Short of the end of the map, radians: what is drawn near the hairline has to have room in it. */
const edge = mapReach - 0.1
const isOffScalp = ([u, v]: SurfacePoint) => !(Math.abs(u) < edge && Math.abs(v) < edge)

function faultOf({ surface, axes }: Head, half: readonly SurfacePoint[], sign: 1 | -1): HairlineFault | null {
  if (half.some(isOffScalp)) return "off-scalp"
  if (half.slice(1, -1).some(([u]) => sign * u <= 0)) return "across-middle"
  const unscaled = half.map((at) => divide(surface.pointAt(at), axes))
  if (unscaled.some(isOnEar) || unscaled.every(([, y]) => y > earMiddle[0])) return "over-ear"
  if (unscaled.some(isOnFace)) return "on-face"
  return crossesItself(half) ? "crosses-itself" : null
}

/** The ear seen from its side, y and z of the unscaled head, mm: an ellipse that leans back, a little smaller than the ear. */
const earMiddle = [-12.5, 0.8] as const
const earHalf = [9, 22] as const
const lean = 0.18

function isOnEar([x, y, z]: Vec3): boolean {
  if (Math.abs(x) < 50) return false
  const [forward, up] = [y - earMiddle[0], z - earMiddle[1]]
  const along = forward * Math.cos(lean) + up * Math.sin(lean)
  const above = up * Math.cos(lean) - forward * Math.sin(lean)
  return (along / earHalf[0]) ** 2 + (above / earHalf[1]) ** 2 < 1
}

/**
 * The face, y and z of the unscaled head, mm: in front under the brows (34: the brow's upper edge, a centimetre over
 * the outer brow end of the 1988 headboard survey), at the side under a line from the brow's end to the jaw in front
 * of the ear. Where it ends is an assumption.
 */
const [browY, browZ] = [50, 34]
const [cheekY, cheekZ] = [18, -45]

function isOnFace([, y, z]: Vec3): boolean {
  if (y >= browY) return z < browZ
  if (y < 0) return false
  return z < cheekZ + (Math.max(0, y - cheekY) / (browY - cheekY)) * (browZ - cheekZ)
}
