import { add, ellipsoid, type Field, paired, rod, sculpt } from "../scalp/fields"
import type { Feel } from "./feel"

/** Neck, shoulders and chest below the unscaled head, mm: what long hair falls on. Modelled by eye, soft and sexless. */
export const bustDistance: Field = sculpt(
  rod([0, -13, -90], 46, [0, -34, -215], 50),
  add(paired(rod([28, -44, -196], 30, [146, -38, -240], 44)), 46), // shoulders
  add(ellipsoid([0, -22, -345], [142, 84, 138]), 60), // chest
  add(paired(rod([152, -38, -250], 44, [168, -30, -420], 42)), 24), // arms
)

/** Below this hair feels the shoulders, mm of the unscaled head. */
export const bustFromMm = -125

const cellMm = 8
const [low, high] = [
  [0, -176, -440],
  [232, 128, -120],
]
const [columns, rows, floors] = [0, 1, 2].map((axis) => Math.round((high[axis] - low[axis]) / cellMm) + 1)

let table: Float32Array | null = null

/** Distance to the bust and the way out of it, by a table of distances; unscaled mm. */
export function feelBust(x: number, y: number, z: number, into: Feel) {
  table ??= tabulate()
  const side = x < 0 ? -1 : 1
  const fx = Math.min(Math.max((Math.abs(x) - low[0]) / cellMm, 0), columns - 1.001)
  const fy = Math.min(Math.max((y - low[1]) / cellMm, 0), rows - 1.001)
  const fz = Math.min(Math.max((z - low[2]) / cellMm, 0), floors - 1.001)
  const [i, j, k] = [Math.floor(fx), Math.floor(fy), Math.floor(fz)]
  const [u, v, w] = [fx - i, fy - j, fz - k]
  const at = (k * rows + j) * columns + i
  const above = at + columns * rows
  const [a0, a1, b0, b1] = [table[at], table[at + 1], table[at + columns], table[at + columns + 1]]
  const [c0, c1] = [table[above], table[above + 1]]
  const [d0, d1] = [table[above + columns], table[above + columns + 1]]
  const a = a0 + (a1 - a0) * u
  const b = b0 + (b1 - b0) * u
  const c = c0 + (c1 - c0) * u
  const d = d0 + (d1 - d0) * u
  const outX =
    side * (((a1 - a0) * (1 - v) + (b1 - b0) * v) * (1 - w) + ((c1 - c0) * (1 - v) + (d1 - d0) * v) * w)
  const outY = (b - a) * (1 - w) + (d - c) * w
  const outZ = c + (d - c) * v - (a + (b - a) * v)
  const length = Math.sqrt(outX * outX + outY * outY + outZ * outZ) || 1
  into.mm = (a + (b - a) * v) * (1 - w) + (c + (d - c) * v) * w
  into.x = outX / length
  into.y = outY / length
  into.z = outZ / length
}

function tabulate(): Float32Array {
  const cells = new Float32Array(columns * rows * floors)
  for (let floor = 0, i = 0; floor < floors; floor++)
    for (let row = 0; row < rows; row++)
      for (let column = 0; column < columns; column++, i++)
        cells[i] = bustDistance(low[0] + column * cellMm, low[1] + row * cellMm, low[2] + floor * cellMm)
  return cells
}
