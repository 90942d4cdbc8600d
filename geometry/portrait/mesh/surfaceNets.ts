import type { Field } from "../../scalp/fields"
import type { Vec3 } from "../../surface/vec3"

/** The planes of a grid along x, y and z, mm, rising. */
export type Planes = { x: readonly number[]; y: readonly number[]; z: readonly number[] }

/** Points xyz mm in one array; quads four points each, counter-clockwise seen from outside. */
export type Quads = { points: number[]; quads: number[] }

/**
 * The zero surface of a distance field: one point in each crossed cell, one quad round each crossed cell edge, mm
 * (naive surface nets after Gibson, Constrained elastic surface nets, MICCAI 1998).
 */
export function surfaceNets(field: Field, planes: Planes): Quads {
  const grid = makeGrid(field, planes)
  const points: number[] = []
  const cells: number[] = []
  for (const [x, y, z] of cellsNear(grid)) {
    const point = pointIn(grid, x, y, z)
    if (!point) continue
    cells.push(indexOf(grid, x, y, z))
    points.push(point[0], point[1], point[2])
  }
  return { points, quads: quadsAround(grid, cells) }
}

/** Planes from one place to past another, each step as long as the last plane's place asks, mm. */
export function planesBetween(from: number, to: number, stepAt: (place: number) => number): number[] {
  const planes = [from]
  for (let place = from; place < to; ) {
    place += stepAt(place)
    planes.push(place)
  }
  return planes
}

/** `corners` is room for the values of one cell, so that none is made for each. */
type Grid = { planes: Planes; strides: Vec3; values: Float64Array; corners: Float64Array; field: Field }

function makeGrid(field: Field, planes: Planes): Grid {
  const values = new Float64Array(planes.x.length * planes.y.length * planes.z.length).fill(Number.NaN)
  const strides: Vec3 = [1, planes.x.length, planes.x.length * planes.y.length]
  return { planes, strides, values, corners: new Float64Array(8), field }
}

const indexOf = ({ strides }: Grid, x: number, y: number, z: number) => x + y * strides[1] + z * strides[2]

function valueAt(grid: Grid, x: number, y: number, z: number) {
  const index = indexOf(grid, x, y, z)
  const { planes, values } = grid
  if (Number.isNaN(values[index])) values[index] = grid.field(planes.x[x], planes.y[y], planes.z[z])
  return values[index]
}

/** Cells the surface may pass through, found by halving blocks that are not clearly to one side of it. */
function cellsNear(grid: Grid): Vec3[] {
  const { x, y, z } = grid.planes
  const cells: Vec3[] = []
  const visit = (i: number, j: number, k: number, side: number) => {
    if (i >= x.length - 1 || j >= y.length - 1 || k >= z.length - 1) return
    if (side === 1) return void cells.push([i, j, k])
    const half = side / 2
    const reach = reachOf(x, i, half) + reachOf(y, j, half) + reachOf(z, k, half)
    // Fields of blended bodies overstate distance, hence the generous sum.
    if (
      Math.abs(valueAt(grid, middleOf(x, i, half), middleOf(y, j, half), middleOf(z, k, half))) >
      0.9 * reach
    )
      return
    for (let n = 0; n < 8; n++)
      visit(i + (n & 1) * half, j + ((n >> 1) & 1) * half, k + (n >> 2) * half, half)
  }
  const block = 8
  for (let k = 0; k < z.length; k += block)
    for (let j = 0; j < y.length; j += block) for (let i = 0; i < x.length; i += block) visit(i, j, k, block)
  return cells
}

const middleOf = (planes: readonly number[], start: number, half: number) =>
  Math.min(start + half, planes.length - 1)

/** From a block's middle plane to the farther of its outer planes, mm. */
function reachOf(planes: readonly number[], start: number, half: number) {
  const middle = planes[middleOf(planes, start, half)]
  return Math.max(middle - planes[start], planes[middleOf(planes, start, 2 * half)] - middle)
}

/** The two ends of each of the twelve edges of a cell, as corner numbers with bits x, y, z. */
const cellEdges = [1, 2, 4].flatMap((bit) =>
  [0, 1, 2, 3, 4, 5, 6, 7].filter((corner) => !(corner & bit)).map((corner) => [corner, corner | bit]),
)

/** The mean of the places where the surface crosses the edges of a cell, or null. */
function pointIn(grid: Grid, x: number, y: number, z: number): Vec3 | null {
  const values = grid.corners
  for (let n = 0; n < 8; n++) values[n] = valueAt(grid, x + (n & 1), y + ((n >> 1) & 1), z + (n >> 2))
  let [right, front, up, crossings] = [0, 0, 0, 0]
  for (const [a, b] of cellEdges) {
    if (values[a] < 0 === values[b] < 0) continue
    const t = values[a] / (values[a] - values[b])
    right += a & 1 ? 1 : b & 1 ? t : 0
    front += a & 2 ? 1 : b & 2 ? t : 0
    up += a & 4 ? 1 : b & 4 ? t : 0
    crossings += 1
  }
  if (crossings === 0) return null
  const place = (planes: readonly number[], at: number, sum: number) =>
    planes[at] + (planes[at + 1] - planes[at]) * (sum / crossings)
  return [place(grid.planes.x, x, right), place(grid.planes.y, y, front), place(grid.planes.z, z, up)]
}

/** A cell's index is that of its lowest corner, from which the edges along x, y and z start. */
function quadsAround({ values, strides }: Grid, cells: readonly number[]): number[] {
  const pointOf = new Int32Array(values.length).fill(-1)
  cells.forEach((cell, point) => {
    pointOf[cell] = point
  })
  const quads: number[] = []
  for (const cell of cells)
    for (let axis = 0; axis < 3; axis++) {
      const isInside = values[cell] < 0
      if (isInside === values[cell + strides[axis]] < 0) continue
      const [across, beyond] = [strides[(axis + 1) % 3], strides[(axis + 2) % 3]]
      const ring = [cell - across - beyond, cell - beyond, cell, cell - across].map((at) => pointOf[at])
      if (!ring.includes(-1)) quads.push(...(isInside ? ring : ring.reverse()))
    }
  return quads
}
