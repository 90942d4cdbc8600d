import type { Surface } from "./surface"
import type { MeasuredPath } from "./surfacePath"
import type { Vec3 } from "./vec3"

export type Nearest = { alongMm: number; chordMm: number }

const blockSize = 8

/**
 * The place of a measured path that is nearest to a point of the head frame: mm along the path and chord in mm.
 * Pieces are kept in blocks with a ball round each, and a block whose ball lies farther than the best is passed over.
 */
export function nearestOnPath(surface: Surface, { points, runMm }: MeasuredPath): (point: Vec3) => Nearest {
  const xyz = Float64Array.from(points.flatMap((at) => [...surface.pointAt(at)]))
  const pieces = points.length - 1
  const balls: number[][] = []
  for (let first = 0; first < pieces; first += blockSize) balls.push(ballRound(xyz, first, pieces))
  return ([x, y, z]) => {
    let best = Infinity
    let alongMm = 0
    const meet = (first: number) => {
      for (let i = first; i < Math.min(first + blockSize, pieces); i++) {
        const k = 3 * i
        const [dx, dy, dz] = [xyz[k + 3] - xyz[k], xyz[k + 4] - xyz[k + 1], xyz[k + 5] - xyz[k + 2]]
        const [ex, ey, ez] = [x - xyz[k], y - xyz[k + 1], z - xyz[k + 2]]
        const share = (dx * ex + dy * ey + dz * ez) / (dx * dx + dy * dy + dz * dz)
        const t = Math.max(0, Math.min(1, share))
        const square = (ex - t * dx) ** 2 + (ey - t * dy) ** 2 + (ez - t * dz) ** 2
        if (square >= best) continue
        best = square
        alongMm = runMm[i] + t * (runMm[i + 1] - runMm[i])
      }
    }
    for (let block = 0; block < balls.length; block++) {
      const [cx, cy, cz, radius] = balls[block]
      const gap = Math.sqrt((x - cx) ** 2 + (y - cy) ** 2 + (z - cz) ** 2) - radius
      if (gap < 0 || gap * gap < best) meet(block * blockSize)
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
