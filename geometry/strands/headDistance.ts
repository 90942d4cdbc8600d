import { headDistance } from "../scalp/headDistanceField"
import type { Vec3 } from "../surface/vec3"
import { bustFromMm, feelBust } from "./bust"
import type { Feel } from "./feel"

/** What hair lies on. `feel` writes into what it is given, for it is asked half a million times. */
export type Body = {
  feel(x: number, y: number, z: number, into: Feel): void
  feelEar(x: number, y: number, z: number, into: Feel): void
  /** Neck, shoulders and chest; far off above them. */
  feelBust(x: number, y: number, z: number, into: Feel): void
}

const cellMm = 5
const [low, high]: readonly [Vec3, Vec3] = [
  [0, -150, -130],
  [110, 130, 150],
]
const [columns, rows, floors] = [0, 1, 2].map((axis) => Math.round((high[axis] - low[axis]) / cellMm) + 1)

let table: Float32Array | null = null

/**
 * Head and neck as a table of distances, scaled by `axes`. Below the table the neck goes straight on. Within the
 * table's cells a distance is up to 0.2 mm too large where the head is round.
 */
export function headDistanceTable(axes: Vec3): Body {
  table ??= tabulate()
  const cells = table
  const [perX, perY, perZ] = axes.map((factor) => 1 / factor)
  const scale = Math.min(...axes)
  /** A body felt at its own size, scaled to the head. */
  const scaled = (felt: Body["feel"]) => (x: number, y: number, z: number, into: Feel) => {
    felt(x * perX, y * perY, z * perZ, into)
    const outX = into.x * perX
    const outY = into.y * perY
    const outZ = into.z * perZ
    const length = Math.sqrt(outX * outX + outY * outY + outZ * outZ) || 1
    into.mm *= scale
    into.x = outX / length
    into.y = outY / length
    into.z = outZ / length
  }
  const bust = scaled(feelBust)
  return {
    feel: scaled((x, y, z, into) => {
      look(cells, Math.abs(x), y, z, into)
      if (x < 0) into.x = -into.x
    }),
    feelEar: (x, y, z, into) => feelEar(x, y, z, axes, into),
    feelBust(x, y, z, into) {
      into.mm = Number.POSITIVE_INFINITY
      if (z * perZ < bustFromMm) bust(x, y, z, into)
    },
  }
}

function tabulate(): Float32Array {
  const cells = new Float32Array(columns * rows * floors)
  for (let floor = 0, i = 0; floor < floors; floor++)
    for (let row = 0; row < rows; row++)
      for (let column = 0; column < columns; column++, i++)
        cells[i] = headDistance(low[0] + column * cellMm, low[1] + row * cellMm, low[2] + floor * cellMm)
  return cells
}

/** Distance and slope between the eight table entries round a place of the right half, unscaled mm. */
function look(cells: Float32Array, x: number, y: number, z: number, into: Feel) {
  const fx = Math.min(Math.max((x - low[0]) / cellMm, 0), columns - 1.001)
  const fy = Math.min(Math.max((y - low[1]) / cellMm, 0), rows - 1.001)
  const fz = Math.min(Math.max((z - low[2]) / cellMm, 0), floors - 1.001)
  const [i, j, k] = [Math.floor(fx), Math.floor(fy), Math.floor(fz)]
  const [u, v, w] = [fx - i, fy - j, fz - k]
  const at = (k * rows + j) * columns + i
  const above = at + columns * rows
  const [a0, a1, b0, b1] = [cells[at], cells[at + 1], cells[at + columns], cells[at + columns + 1]]
  const [c0, c1, d0, d1] = [
    cells[above],
    cells[above + 1],
    cells[above + columns],
    cells[above + columns + 1],
  ]
  const a = a0 + (a1 - a0) * u
  const b = b0 + (b1 - b0) * u
  const c = c0 + (c1 - c0) * u
  const d = d0 + (d1 - d0) * u
  into.mm = (a + (b - a) * v) * (1 - w) + (c + (d - c) * v) * w
  into.x = ((a1 - a0) * (1 - v) + (b1 - b0) * v) * (1 - w) + ((c1 - c0) * (1 - v) + (d1 - d0) * v) * w
  into.y = (b - a) * (1 - w) + (d - c) * w
  into.z = c + (d - c) * v - (a + (b - a) * v)
}

/** The right ear as hair feels it, pressed to the head: an ellipsoid, mm. */
const earMiddle: Vec3 = [65, -14, 2]
const earHalf: Vec3 = [12, 24, 34]

/** By the first-order bound of an ellipsoid's distance, exact on its skin. */
function feelEar(x: number, y: number, z: number, axes: Vec3, into: Feel) {
  const side = x < 0 ? -1 : 1
  const u = (x * side - earMiddle[0] * axes[0]) / earHalf[0]
  const v = (y - earMiddle[1] * axes[1]) / earHalf[1]
  const w = (z - earMiddle[2] * axes[2]) / earHalf[2]
  const unit = Math.sqrt(u * u + v * v + w * w) || 1e-9
  const [outX, outY, outZ] = [u / earHalf[0], v / earHalf[1], w / earHalf[2]]
  const slope = Math.sqrt(outX * outX + outY * outY + outZ * outZ) || 1e-9
  into.mm = (unit * (unit - 1)) / slope
  into.x = (side * outX) / slope
  into.y = outY / slope
  into.z = outZ / slope
}
