import { subtract, type Vec3 } from "../surface/vec3"
import type { CaliperMm } from "./headMeasures"
import { headSurface } from "./headSurface"
import { type Landmark, landmarkOn } from "./landmarks"

/** How the unscaled head lies between a caliper's jaws, mm: half its breadth, its height, and its length forward and up. */
type Unscaled = { halfBreadth: number; height: number; forward: number; up: number }
let unscaled: Unscaled | null = null

function measureUnscaled(): Unscaled {
  const at = (name: Landmark) => landmarkOn(headSurface([1, 1, 1]), name)
  const [, forward, up] = subtract(at("glabella"), at("opisthocranion"))
  return { halfBreadth: at("euryon")[0], height: at("vertex")[2], forward, up }
}

/**
 * The factors on x, y, z under which a caliper reads so. Breadth and height scale with x and z; length lies in y and z,
 * so y takes what z leaves of it.
 */
export function caliperAxes({ lengthMm, breadthMm, heightMm }: CaliperMm): Vec3 {
  unscaled ??= measureUnscaled()
  const { halfBreadth, height, forward, up } = unscaled
  const z = heightMm / height
  return [breadthMm / (2 * halfBreadth), Math.sqrt(lengthMm ** 2 - (z * up) ** 2) / forward, z]
}

/** How those factors grow with each mm of length, of breadth and of height. */
export function caliperSlopes({ lengthMm, heightMm }: CaliperMm): readonly [Vec3, Vec3, Vec3] {
  unscaled ??= measureUnscaled()
  const { halfBreadth, height, forward, up } = unscaled
  const z = heightMm / height
  const ahead = Math.sqrt(lengthMm ** 2 - (z * up) ** 2) * forward
  return [
    [0, lengthMm / ahead, 0],
    [1 / (2 * halfBreadth), 0, 0],
    [0, (-z * up ** 2) / height / ahead, 1 / height],
  ]
}
