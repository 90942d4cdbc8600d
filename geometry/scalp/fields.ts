import type { Vec3 } from "../surface/vec3"

/** Signed distance to a body in mm, negative inside; near the skin only, farther off it is a fair guess. */
export type Field = (x: number, y: number, z: number) => number

/** An ellipsoid, mm. Distance by Quilez's first-order bound k0 (k0 - 1) / k1, exact on the skin. */
export function ellipsoid([cx, cy, cz]: Vec3, [a, b, c]: Vec3): Field {
  const [perA, perB, perC, deepest] = [1 / a, 1 / b, 1 / c, -Math.min(a, b, c)]
  return (x, y, z) => {
    const u = (x - cx) * perA
    const v = (y - cy) * perB
    const w = (z - cz) * perC
    const unit = u * u + v * v + w * w
    if (unit < 1e-18) return deepest
    const slope = u * u * perA * perA + v * v * perB * perB + w * w * perC * perC
    return (unit - Math.sqrt(unit)) / Math.sqrt(slope)
  }
}

/** A rod from p to q with round ends, whose radius goes from `atP` to `atQ`, mm. */
export function rod([px, py, pz]: Vec3, atP: number, [qx, qy, qz]: Vec3, atQ: number): Field {
  const [dx, dy, dz] = [qx - px, qy - py, qz - pz]
  const perSquare = 1 / (dx * dx + dy * dy + dz * dz)
  return (x, y, z) => {
    const along = ((x - px) * dx + (y - py) * dy + (z - pz) * dz) * perSquare
    const t = Math.min(1, Math.max(0, along))
    const u = x - px - dx * t
    const v = y - py - dy * t
    const w = z - pz - dz * t
    return Math.sqrt(u * u + v * v + w * w) - (atP + (atQ - atP) * t)
  }
}

/** A part on the right and its mirror image. The fold is rounded over 4 mm, so no crease runs down the middle. */
export const paired =
  (part: Field): Field =>
  (x, y, z) =>
    part(Math.sqrt(x * x + 16), y, z)

/** One step of a sculpture: a part put on or cut away, and how soft the seam is, mm. */
type Step = { part: Field; reach: number; cut: boolean }

/** Adds a part with a seam as soft as `reach` mm. */
export const add = (part: Field, reach: number): Step => ({ part, reach, cut: false })

/** Takes a part away, with a rim as soft as `reach` mm. */
export const cut = (part: Field, reach: number): Step => ({ part, reach, cut: true })

/** A first part, then steps in order. */
export function sculpt(first: Field, ...steps: Step[]): Field {
  return (x, y, z) => {
    let d = first(x, y, z)
    for (const { part, reach, cut } of steps)
      d = cut ? -softMin(-d, part(x, y, z), reach) : softMin(d, part(x, y, z), reach)
    return d
  }
}

/** The lesser of two, rounded where they differ by less than `reach` (quadratic smooth minimum). */
function softMin(a: number, b: number, reach: number) {
  const overlap = reach - Math.abs(a - b)
  const least = Math.min(a, b)
  return overlap > 0 ? least - (overlap * overlap) / (4 * reach) : least
}
