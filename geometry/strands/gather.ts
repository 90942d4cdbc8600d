import { multiply, type Vec3 } from "../surface/vec3"
import { hashRandom } from "./hashRandom"

/** How the hair about the face is worn: on the cheek, tucked behind the ears, or all of it tied back. */
export const wornFronts = ["cheek", "tucked", "tied"] as const
export type WornFront = (typeof wornFronts)[number]

/** Where tucked hair passes behind the right ear, and where tied hair is gathered; mm of the unscaled head. */
const behindEar: Vec3 = [69, -44, 6]
const atNape: Vec3 = [0, -104, -22]
/** Hair whose root lies before this is tucked. */
const tuckedFromY = -5
const spreadMm = { tucked: 9, tied: 15 }

/** The place that a strand is led to before it hangs free, mm; null where it hangs free from its root. */
export function gatheredAt(front: WornFront, root: Vec3, axes: Vec3, own: number): Vec3 | null {
  if (front === "cheek" || (front === "tucked" && root[1] < tuckedFromY * axes[1])) return null
  const side = root[0] < 0 ? -1 : 1
  const middle = front === "tied" ? atNape : ([side * behindEar[0], behindEar[1], behindEar[2]] as const)
  const off = (lot: number) => (2 * hashRandom(own, lot) - 1) * spreadMm[front]
  return multiply([middle[0] + off(21), middle[1] + 0.5 * off(22), middle[2] + off(23)], axes)
}
