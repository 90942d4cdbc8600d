import type { Surface } from "./surface"
import type { MeasuredPath } from "./surfacePath"
import type { Vec3 } from "./vec3"

export type Nearest = { alongMm: number; chordMm: number }

const blockSize = 8

/**
 * The place of a measured path that is nearest to a point of the head frame: mm along the path and chord in mm.
 * Pieces are kept in blocks with a ball round each. The block whose ball is nearest is looked at first, and then no
 * block whose ball lies farther than the best.
 */
export function nearestOnPath(surface: Surface, { points, runMm }: MeasuredPath): (point: Vec3) => Nearest {
  const xyz = Float64Array.from(points.flatMap((at) => [...surface.pointAt(at)]))
  const pieces = points.length - 1
  const firsts = Array.from({ length: Math.ceil(pieces / blockSize) }, (_, block) => block * blockSize)
  const balls = Float64Array.from(firsts.flatMap((first) => ballRound(xyz, first, pieces)))
  const gaps = new Float64Array(firsts.length)
  return ([x, y, z]) => {
    let [best, alongMm, nearest] = [Infinity, 0, 0]
    for (let block = 0; block < gaps.length; block++) {
      const [cx, cy, cz] = [x - balls[4 * block], y - balls[4 * block + 1], z - balls[4 * block + 2]]
      gaps[block] = Math.sqrt(cx * cx + cy * cy + cz * cz) - balls[4 * block + 3]
      if (gaps[block] < gaps[nearest]) nearest = block
    }
    for (let turn = -1; turn < gaps.length; turn++) {
      const block = turn < 0 ? nearest : turn
      const isFarther = gaps[block] > 0 && gaps[block] * gaps[block] >= best
      if (isFarther || turn === nearest) continue
      const end = Math.min((block + 1) * blockSize, pieces)
      for (let i = block * blockSize; i < end; i++) {
        const k = 3 * i
        const [dx, dy, dz] = [xyz[k + 3] - xyz[k], xyz[k + 4] - xyz[k + 1], xyz[k + 5] - xyz[k + 2]]
        const [ex, ey, ez] = [x - xyz[k], y - xyz[k + 1], z - xyz[k + 2]]
        const share = (dx * ex + dy * ey + dz * ez) / (dx * dx + dy * dy + dz * dz)
        const t = Math.max(0, Math.min(1, share))
        const [fx, fy, fz] = [ex - t * dx, ey - t * dy, ez - t * dz]
        const square = fx * fx + fy * fy + fz * fz
        if (square >= best) continue
        best = square
        alongMm = runMm[i] + t * (runMm[i + 1] - runMm[i])
      }
    }
    return { alongMm, chordMm: Math.sqrt(best) }
  }
}

function ballRound(xyz: Float64Array, first: number, pieces: number): number[] {
  const last = Math.min(first + blockSize, pieces)
  const centre = [0, 1, 2].map((axis) => (xyz[3 * first + axis] + xyz[3 * last + axis]) / 2)
  let radius = 0
  for (let i = first; i <= last; i++)
    radius = Math.max(radius, Math.hypot(...centre.map((c, axis) => xyz[3 * i + axis] - c)))
  return [...centre, radius]
}
