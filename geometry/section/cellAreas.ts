import type { BandShape } from "./bandShape"

/**
 * The area of each cell of a band, cm2, column by column from the first station and layer by layer from the parting.
 * Where ribs cross, inside a tight bend, cells are folded over; those count nothing.
 */
export function cellAreasCm2(shape: BandShape): Float64Array {
  const across = shape.layers - 1
  const hand = handOf(shape)
  return new Float64Array((shape.stations - 1) * across).map((_, cell) => {
    const corner = Math.floor(cell / across) * shape.layers + (cell % across)
    return Math.max(0, hand * signedAreaCm2(shape, corner))
  })
}

/** The area of a band on the scalp, cm2. */
export const bandAreaCm2 = (shape: BandShape) => cellAreasCm2(shape).reduce((sum, area) => sum + area, 0)

/** 1 when the ribs run to the left of the parting, -1 to its right: by the turn from the parting to each rib's first step. */
function handOf(shape: BandShape): number {
  let turn = 0
  for (let foot = 0; foot < (shape.stations - 1) * shape.layers; foot += shape.layers)
    turn += signedCross(shape, [foot, foot + shape.layers], [foot, foot + 1])
  return turn < 0 ? -1 : 1
}

/** Half the cross product of the diagonals of the cell that starts at a grid point; positive when it is walked to the left. */
const signedAreaCm2 = (shape: BandShape, a: number) =>
  signedCross(shape, [a, a + shape.layers + 1], [a + shape.layers, a + 1]) / 200

type Edge = readonly [from: number, to: number]

/** Size of the cross product of two lines between grid points, mm2; negative when it points into the head. */
function signedCross({ points, normals }: BandShape, [a, b]: Edge, [c, d]: Edge): number {
  const [i, j, k, l] = [3 * a, 3 * b, 3 * c, 3 * d]
  const [px, py, pz] = [points[j] - points[i], points[j + 1] - points[i + 1], points[j + 2] - points[i + 2]]
  const [qx, qy, qz] = [points[l] - points[k], points[l + 1] - points[k + 1], points[l + 2] - points[k + 2]]
  const [x, y, z] = [py * qz - pz * qy, pz * qx - px * qz, px * qy - py * qx]
  const outward = x * normals[i] + y * normals[i + 1] + z * normals[i + 2]
  return Math.sign(outward) * Math.sqrt(x * x + y * y + z * z)
}

/** The middle of the cell that starts at a grid point, mm. */
export function cellMiddle({ points, layers }: BandShape, corner: number): [number, number, number] {
  const a = 3 * corner
  const [b, c, d] = [a + 3 * layers, a + 3, a + 3 * layers + 3]
  return [
    (points[a] + points[b] + points[c] + points[d]) / 4,
    (points[a + 1] + points[b + 1] + points[c + 1] + points[d + 1]) / 4,
    (points[a + 2] + points[b + 2] + points[c + 2] + points[d + 2]) / 4,
  ]
}
