import { type MapFrame, makeSurface, mapDirections, type RadiusField, type Surface } from "../surface/surface"
import type { Vec3 } from "../surface/vec3"
import { headDistance } from "./headDistanceField"

/** Directions are counted from 20 mm above the ears; the pole leans 25 degrees back, to the crown. */
export const headMapFrame: MapFrame = { centre: [0, 0, 20], poleTilt: (25 * Math.PI) / 180 }

/** The map is tabulated out to here, radians from the pole: past the hairline everywhere, short of the chin. */
export const mapReach = 2.4
const cells = 64
const step = mapReach / cells
const columns = cells + 2
const rows = 2 * cells + 3

let table: Float64Array | null = null

/** The head's scalp as a surface; `axes` scale the unscaled shape on x, y, z. */
export function headSurface(axes: Vec3): Surface {
  table ??= tabulate()
  return makeSurface(interpolate(table), headMapFrame, axes, 120)
}

/** Radii on a grid of the right half of the map (u from 0), found on the distance field by stepping along rays. */
function tabulate(): Float64Array {
  const { at } = mapDirections(headMapFrame.poleTilt)
  const [cx, cy, cz] = headMapFrame.centre
  const radii = new Float64Array(columns * rows)
  for (let row = 0; row < rows; row++) {
    let radius = 100
    for (let column = 0; column < columns; column++) {
      const [x, y, z] = at(column * step, (row - cells - 1) * step)
      const distanceAt = (r: number) => headDistance(cx + x * r, cy + y * r, cz + z * r)
      radius = rootNear(distanceAt, radius)
      radii[row * columns + column] = radius
    }
  }
  return radii
}

function rootNear(distanceAt: (radius: number) => number, start: number): number {
  let [previous, radius] = [start + 1, start]
  let [before, now] = [distanceAt(previous), distanceAt(radius)]
  for (let i = 0; i < 40 && Math.abs(now) > 1e-7; i++) {
    const slope = (now - before) / (radius - previous)
    const move = slope > 0.2 ? now / slope : now
    previous = radius
    before = now
    radius = Math.max(20, radius - Math.max(-15, Math.min(15, move)))
    now = distanceAt(radius)
  }
  return radius
}

/** Bicubic (Catmull-Rom) interpolation: the radius and both slopes, continuous everywhere. */
function interpolate(radii: Float64Array): RadiusField {
  return (u, v) => {
    const x = Math.min(Math.abs(u) / step, cells - 1e-9)
    const y = Math.min(Math.max(v / step + cells + 1, 1), rows - 2 - 1e-9)
    const column = Math.floor(x)
    const row = Math.floor(y)
    const [a0, a1, a2, a3] = weights(x - column)
    const [s0, s1, s2, s3] = slopes(x - column)
    const [b0, b1, b2, b3] = weights(y - row)
    const [t0, t1, t2, t3] = slopes(y - row)
    let radius = 0
    let du = 0
    let dv = 0
    for (let i = 0; i < 4; i++) {
      const base = (row + i - 1) * columns
      const left = radii[base + Math.abs(column - 1)]
      const near = radii[base + column]
      const far = radii[base + column + 1]
      const last = radii[base + Math.min(column + 2, columns - 1)]
      const value = a0 * left + a1 * near + a2 * far + a3 * last
      const b = i === 0 ? b0 : i === 1 ? b1 : i === 2 ? b2 : b3
      radius += b * value
      du += b * (s0 * left + s1 * near + s2 * far + s3 * last)
      dv += (i === 0 ? t0 : i === 1 ? t1 : i === 2 ? t2 : t3) * value
    }
    return [radius, (u < 0 ? -du : du) / step, dv / step]
  }
}

const weights = (t: number) => [
  t * (-0.5 + t * (1 - 0.5 * t)),
  1 + t * t * (-2.5 + 1.5 * t),
  t * (0.5 + t * (2 - 1.5 * t)),
  t * t * (-0.5 + 0.5 * t),
]
const slopes = (t: number) => [
  -0.5 + t * (2 - 1.5 * t),
  t * (-5 + 4.5 * t),
  0.5 + t * (4 - 4.5 * t),
  t * (-1 + 1.5 * t),
]
