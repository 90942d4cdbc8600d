import type { Field } from "../scalp/fields"
import type { Vec3 } from "../surface/vec3"
import type { Feel } from "./feel"

/** The right half of a mirror-symmetric body as a grid of distances: the box it fills, from low to high, and the edge of a cell, mm. */
export type TableSize = { low: Vec3; high: Vec3; cellMm: number }

/**
 * A body looked up in a table of its distances, made when first asked: the distance between the eight entries round a place
 * of either half, and the way out, as long as the distance grows from entry to entry.
 */
export function distanceTable(field: Field, { low, high, cellMm }: TableSize) {
  const [columns, rows, floors] = [0, 1, 2].map((axis) => Math.round((high[axis] - low[axis]) / cellMm) + 1)
  let table: Float32Array | null = null
  const tabulate = () => {
    const cells = new Float32Array(columns * rows * floors)
    for (let floor = 0, i = 0; floor < floors; floor++)
      for (let row = 0; row < rows; row++)
        for (let column = 0; column < columns; column++, i++)
          cells[i] = field(low[0] + column * cellMm, low[1] + row * cellMm, low[2] + floor * cellMm)
    return cells
  }
  return (x: number, y: number, z: number, into: Feel) => {
    table ??= tabulate()
    const cells = table
    const fx = Math.min(Math.max((Math.abs(x) - low[0]) / cellMm, 0), columns - 1.001)
    const fy = Math.min(Math.max((y - low[1]) / cellMm, 0), rows - 1.001)
    const fz = Math.min(Math.max((z - low[2]) / cellMm, 0), floors - 1.001)
    const [i, j, k] = [Math.floor(fx), Math.floor(fy), Math.floor(fz)]
    const [u, v, w] = [fx - i, fy - j, fz - k]
    const at = (k * rows + j) * columns + i
    const above = at + columns * rows
    const [a0, a1, b0, b1] = [cells[at], cells[at + 1], cells[at + columns], cells[at + columns + 1]]
    const [c0, c1] = [cells[above], cells[above + 1]]
    const [d0, d1] = [cells[above + columns], cells[above + columns + 1]]
    const a = a0 + (a1 - a0) * u
    const b = b0 + (b1 - b0) * u
    const c = c0 + (c1 - c0) * u
    const d = d0 + (d1 - d0) * u
    const outX = ((a1 - a0) * (1 - v) + (b1 - b0) * v) * (1 - w) + ((c1 - c0) * (1 - v) + (d1 - d0) * v) * w
    into.mm = (a + (b - a) * v) * (1 - w) + (c + (d - c) * v) * w
    into.x = x < 0 ? -outX : outX
    into.y = (b - a) * (1 - w) + (d - c) * w
    into.z = c + (d - c) * v - (a + (b - a) * v)
  }
}
