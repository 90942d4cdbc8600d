import { type Tape, tautMm } from "../surface/tape"
import { add, cross, dot, length, scale, subtract, type Vec3 } from "../surface/vec3"
import { headTapes, type TapeMm } from "./headMeasures"
import { headSurface } from "./headSurface"

/**
 * The factors on x, y and z under which the three tapes over hair read as they were taken, mm, or null. Newton's
 * method: taut lengths grow nearly in proportion to the axes, so a few steps do.
 */
export function fitTapes({ aroundMm, overMm, frontToNapeMm }: TapeMm, hairUnderTape: number): Vec3 | null {
  const wanted = scale([aroundMm, overMm, frontToNapeMm], 1 / (1 + hairUnderTape))
  let axes: Vec3 = [1, 1, 1]
  for (let i = 0; i < 12; i++) {
    const missing = subtract(wanted, tautLengths(axes))
    if (length(missing) < 1e-6) return axes
    axes = add(axes, solve(slopes(axes), missing))
  }
  return null
}

let laid: Record<keyof TapeMm, Tape> | null = null

/** The three tapes on the unscaled head stretched by `axes`, pulled taut, mm. */
function tautLengths(axes: Vec3): Vec3 {
  laid ??= headTapes(headSurface([1, 1, 1]))
  return [tautMm(laid.aroundMm, axes), tautMm(laid.overMm, axes), tautMm(laid.frontToNapeMm, axes)]
}

/** How the three lengths grow with the factor on x, on y and on z, mm. */
function slopes([x, y, z]: Vec3): Columns {
  const h = 1e-4
  const between = (less: Vec3, more: Vec3) =>
    scale(subtract(tautLengths(more), tautLengths(less)), 1 / (2 * h))
  return [
    between([x - h, y, z], [x + h, y, z]),
    between([x, y - h, z], [x, y + h, z]),
    between([x, y, z - h], [x, y, z + h]),
  ]
}

type Columns = readonly [Vec3, Vec3, Vec3]

/** Three equations in three unknowns by Cramer's rule. */
function solve([a, b, c]: Columns, right: Vec3): Vec3 {
  const volume = dot(a, cross(b, c))
  return scale([dot(right, cross(b, c)), dot(a, cross(right, c)), dot(a, cross(b, right))], 1 / volume)
}
