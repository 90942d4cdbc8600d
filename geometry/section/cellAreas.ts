import type { BandShape, Grid } from "./bandGrid"

/** The area of each cell of a band, cm2; negative where ribs have crossed, inside a tight bend, and the cell is folded over. */
export function signedAreasCm2(grid: Grid): Float64Array {
  const { layers, stations, alongMm, depthMm } = grid
  const across = layers - 1
  const hand = handOf(grid)
  const areas = new Float64Array((stations - 1) * across)
  for (let column = 0, cell = 0; column < stations - 1; column++) {
    const foot = column * layers
    const wide = bowed(alongMm[column + 1] - alongMm[column], grid, foot, foot + layers)
    const deep = depthMm[column] > 0 ? bowed(depthMm[column] / across, grid, foot, foot + 1) : 1
    for (let layer = 0; layer < across; layer++, cell++)
      areas[cell] = hand * wide * deep * signedAreaCm2(grid, foot + layer)
  }
  return areas
}

/** By how much of itself a bend on the way between two grid points, of the line or of the scalp, is longer than the straight way. */
function bowed(wayMm: number, { points }: Grid, a: number, b: number): number {
  const [i, j] = [3 * a, 3 * b]
  const [x, y, z] = [points[j] - points[i], points[j + 1] - points[i + 1], points[j + 2] - points[i + 2]]
  const mm = Math.sqrt(x * x + y * y + z * z)
  return mm > 0 ? Math.min(mostBowed, wayMm / mm) : 1
}

/** A step bends by no more than a radian. */
const mostBowed = 1.05

/** The grid point at which a cell starts. */
export const cornerOf = (cell: number, layers: number) =>
  Math.floor(cell / (layers - 1)) * layers + (cell % (layers - 1))

/** The area of a band on the scalp, cm2. */
export const bandAreaCm2 = ({ areasCm2 }: BandShape) => areasCm2.reduce((sum, area) => sum + area, 0)

/** 1 when the ribs run to the left of the parting, -1 to its right: by the turn from the parting to each rib's first step. */
function handOf(grid: Grid): number {
  let turn = 0
  for (let foot = 0; foot < (grid.stations - 1) * grid.layers; foot += grid.layers)
    turn += signedCross(grid, foot, foot + grid.layers, foot, foot + 1)
  return turn < 0 ? -1 : 1
}

/** Half the cross product of the diagonals of the cell that starts at a grid point; positive when it is walked to the left. */
const signedAreaCm2 = (grid: Grid, a: number) =>
  signedCross(grid, a, a + grid.layers + 1, a + grid.layers, a + 1) / 200

/** Size of the cross product of the lines from a to b and from c to d, mm2; negative when it points into the head. */
function signedCross({ points, normals }: Grid, a: number, b: number, c: number, d: number): number {
  const [i, j, k, l] = [3 * a, 3 * b, 3 * c, 3 * d]
  const [px, py, pz] = [points[j] - points[i], points[j + 1] - points[i + 1], points[j + 2] - points[i + 2]]
  const [qx, qy, qz] = [points[l] - points[k], points[l + 1] - points[k + 1], points[l + 2] - points[k + 2]]
  const [x, y, z] = [py * qz - pz * qy, pz * qx - px * qz, px * qy - py * qx]
  const outward = x * normals[i] + y * normals[i + 1] + z * normals[i + 2]
  return Math.sign(outward) * Math.sqrt(x * x + y * y + z * z)
}

/** The middle of the cell that starts at a grid point, mm. */
export function cellMiddle(
  { points, layers }: Pick<BandShape, "points" | "layers">,
  corner: number,
): [number, number, number] {
  const a = 3 * corner
  const [b, c, d] = [a + 3 * layers, a + 3, a + 3 * layers + 3]
  return [
    (points[a] + points[b] + points[c] + points[d]) / 4,
    (points[a + 1] + points[b + 1] + points[c + 1] + points[d + 1]) / 4,
    (points[a + 2] + points[b + 2] + points[c + 2] + points[d + 2]) / 4,
  ]
}
