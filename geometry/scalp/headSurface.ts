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
  return (u, v, into) => {
    const x = Math.min(Math.abs(u) / step, cells - 1e-9)
    const y = Math.min(Math.max(v / step + cells + 1, 1), rows - 2 - 1e-9)
    const column = Math.floor(x)
    const row = Math.floor(y)
    const s = x - column
    const [a0, a1, a2, a3] = [w0(s), w1(s), w2(s), w3(s)]
    const [s0, s1, s2, s3] = [d0(s), d1(s), d2(s), d3(s)]
    const before = Math.abs(column - 1)
    const last = Math.min(column + 2, columns - 1)
    const t = y - row
    let [radius, du, dv] = [0, 0, 0]
    for (let i = 0; i < 4; i++) {
      const base = (row + i - 1) * columns
      const [r0, r1, r2, r3] = [
        radii[base + before],
        radii[base + column],
        radii[base + column + 1],
        radii[base + last],
      ]
      const value = a0 * r0 + a1 * r1 + a2 * r2 + a3 * r3
      const b = i === 0 ? w0(t) : i === 1 ? w1(t) : i === 2 ? w2(t) : w3(t)
      const d = i === 0 ? d0(t) : i === 1 ? d1(t) : i === 2 ? d2(t) : d3(t)
      radius += b * value
      du += b * (s0 * r0 + s1 * r1 + s2 * r2 + s3 * r3)
      dv += d * value
    }
    into[0] = radius
    into[1] = (u < 0 ? -du : du) / step
    into[2] = dv / step
  }
}

/** The weights of four neighbours, and how they change. */
const w0 = (t: number) => t * (-0.5 + t * (1 - 0.5 * t))
const w1 = (t: number) => 1 + t * t * (-2.5 + 1.5 * t)
const w2 = (t: number) => t * (0.5 + t * (2 - 1.5 * t))
const w3 = (t: number) => t * t * (-0.5 + 0.5 * t)
const d0 = (t: number) => -0.5 + t * (2 - 1.5 * t)
const d1 = (t: number) => t * (-5 + 4.5 * t)
const d2 = (t: number) => 0.5 + t * (4 - 4.5 * t)
const d3 = (t: number) => t * (-1 + 1.5 * t)
