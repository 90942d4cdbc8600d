import type { Vec3 } from "../surface/vec3"
import { pointsEach, type Strands } from "./grow"

/** Cells of the grid that hair is counted in, mm; the box it covers, head frame. */
const cellMm = 8
const low = [-240, -220, -480]
const counts = [60, 56, 84]
const steps = 6
/** How much a strand's length in a cell closes it off, per mm for one of ten thousand. */
const closing = 0.0042
const [middleY, middleZ] = [-12, 40]

/**
 * How open each point of each strand lies to the light, from its own side or from before the face, 0 to 255: what hair lies
 * between it and the outside, counted in a coarse grid.
 */
export function opennessOf({ points, lengthsMm, count }: Pick<Strands, "points" | "lengthsMm" | "count">) {
  const hairMm = hairInCells({ points, lengthsMm, count })
  const open = new Uint8Array(count * pointsEach)
  const perStrand = (closing * 10_000) / count
  for (let i = 0; i < open.length; i++) {
    const [x, y, z] = [points[3 * i], points[3 * i + 1], points[3 * i + 2]]
    const own = between(hairMm, [x, y, z], [x, y - middleY, Math.max(0, z - middleZ) + 30])
    const ahead = between(hairMm, [x, y, z], fromFront)
    open[i] = Math.round(255 * Math.exp(-perStrand * Math.min(own, ahead)))
  }
  return open
}

/** The light before the face, a little from above. */
const fromFront: Vec3 = [0, 0.9, 0.44]

/** How much hair lies in the cells on the way out from a place, mm. */
function between(hairMm: Float32Array, [x, y, z]: Vec3, [outX, outY, outZ]: Vec3): number {
  const size = cellMm / (Math.sqrt(outX * outX + outY * outY + outZ * outZ) || 1)
  let sum = 0
  for (let step = 1; step <= steps; step++)
    sum += hairMm[cellAt(x + outX * size * step, y + outY * size * step, z + outZ * size * step)]
  return sum
}

function hairInCells({ points, lengthsMm, count }: Pick<Strands, "points" | "lengthsMm" | "count">) {
  const cells = new Float32Array(counts[0] * counts[1] * counts[2])
  for (let strand = 0; strand < count; strand++) {
    const stepMm = lengthsMm[strand] / (pointsEach - 1)
    for (let k = 0; k < pointsEach; k++) {
      const i = 3 * (strand * pointsEach + k)
      cells[cellAt(points[i], points[i + 1], points[i + 2])] += stepMm
    }
  }
  return cells
}

const within = (cell: number, axis: number) => Math.min(counts[axis] - 1, Math.max(0, cell))

const cellAt = (x: number, y: number, z: number) =>
  within(Math.floor((x - low[0]) / cellMm), 0) +
  counts[0] *
    (within(Math.floor((y - low[1]) / cellMm), 1) + counts[1] * within(Math.floor((z - low[2]) / cellMm), 2))
