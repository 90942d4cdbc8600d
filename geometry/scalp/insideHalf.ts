import type { SurfacePoint } from "../surface/frames"

const rows = 256

/**
 * A quick test whether a point of the right half of the scalp map (u from 0) lies between the midline and a line
 * that runs from the midline to the midline. Edges are sorted into rows of v, so that a test meets a few of them.
 */
export function insideHalf(line: readonly SurfacePoint[]): (u: number, v: number) => boolean {
  const vs = line.map(([, v]) => v)
  const bottom = Math.min(...vs)
  const height = Math.max(...vs) - bottom
  const rowOf = (v: number) => Math.min(rows - 1, Math.floor(((v - bottom) / height) * rows))
  const edges: number[][] = Array.from({ length: rows }, () => [])
  for (let i = 1; i < line.length; i++) {
    const [one, other] = [rowOf(vs[i - 1]), rowOf(vs[i])]
    for (let row = Math.min(one, other); row <= Math.max(one, other); row++) edges[row].push(i)
  }
  return (u, v) => {
    if (!(v >= bottom && v < bottom + height)) return false
    let crossings = 0
    for (const i of edges[rowOf(v)]) if (isRightOf(line[i - 1], line[i], u, v)) crossings++
    return crossings % 2 === 1
  }
}

/** Whether a ray to growing u meets the edge; an edge owns its lower end, so a shared corner counts once. */
function isRightOf([u0, v0]: SurfacePoint, [u1, v1]: SurfacePoint, u: number, v: number): boolean {
  return v0 <= v !== v1 <= v && u0 + ((u1 - u0) * (v - v0)) / (v1 - v0) > u
}
