import type { BandShape } from "./bandShape"

/**
 * The area of each cell of a band, cm2, column by column from the first station and layer by layer from the parting.
 * A cell folded over by crossing ribs counts nothing.
 */
export function cellAreasCm2(shape: BandShape): Float64Array {
  const across = shape.layers - 1
  const areas = new Float64Array((shape.stations - 1) * across)
  let turn = 0
  for (let cell = 0; cell < areas.length; cell++) {
    areas[cell] = signedAreaCm2(shape, Math.floor(cell / across) * shape.layers + (cell % across))
    turn += areas[cell]
  }
  return areas.map((area) => Math.max(0, turn < 0 ? -area : area))
}

/** The area of a band on the scalp, cm2. */
export const bandAreaCm2 = (shape: BandShape) => cellAreasCm2(shape).reduce((sum, area) => sum + area, 0)

/** Half the cross product of the diagonals of the cell that starts at a grid point; positive when its ribs run to the left. */
function signedAreaCm2({ points, normals, layers }: BandShape, corner: number): number {
  const a = 3 * corner
  const [b, c, d] = [a + 3 * layers, a + 3, a + 3 * layers + 3]
  const [px, py, pz] = [points[d] - points[a], points[d + 1] - points[a + 1], points[d + 2] - points[a + 2]]
  const [qx, qy, qz] = [points[c] - points[b], points[c + 1] - points[b + 1], points[c + 2] - points[b + 2]]
  const [x, y, z] = [py * qz - pz * qy, pz * qx - px * qz, px * qy - py * qx]
  const outward = x * normals[a] + y * normals[a + 1] + z * normals[a + 2]
  return (Math.sign(outward) * Math.sqrt(x * x + y * y + z * z)) / 200
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
