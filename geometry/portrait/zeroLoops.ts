import type { Mesh } from "./mesh/mesh"

/**
 * A closed loop on a mesh: the edges it crosses, how far along each (0 to 1, from the edge's first point), and
 * the triangles between one crossing and the next.
 */
export type ZeroLoop = { edges: number[]; shares: number[]; triangles: number[] }

/** The loops along which a number given for each point of a closed mesh passes through zero. */
export function zeroLoops(mesh: Mesh, values: Float64Array): ZeroLoop[] {
  const { onward, crossed } = crossings(mesh, values)
  const loops: ZeroLoop[] = []
  for (const start of crossed) {
    const loop: ZeroLoop = { edges: [], shares: [], triangles: [] }
    for (let edge = start; onward[2 * edge] >= 0; ) {
      const [next, triangle] = [onward[2 * edge], onward[2 * edge + 1]]
      const [from, to] = [values[mesh.edges[2 * edge]], values[mesh.edges[2 * edge + 1]]]
      loop.edges.push(edge)
      loop.shares.push(from / (from - to))
      loop.triangles.push(triangle)
      onward[2 * edge] = -1
      edge = next
    }
    if (loop.edges.length > 3) loops.push(loop)
  }
  return loops
}

/** One table a mesh; walking the loops leaves it as it was, all -1. */
const lent = new WeakMap<Mesh["edges"], Int32Array>()

/**
 * For each crossed edge the edge crossed next, and the triangle between. Every loop is walked with the
 * positive side on the same hand, so each edge has one next edge.
 */
function crossings({ triangles, triangleEdges, edges }: Mesh, values: Float64Array) {
  const onward = lent.get(edges) ?? new Int32Array(edges.length).fill(-1)
  lent.set(edges, onward)
  const crossed: number[] = []
  for (let i = 0; i < triangles.length; i += 3) {
    const a = values[triangles[i]] >= 0
    const b = values[triangles[i + 1]] >= 0
    const c = values[triangles[i + 2]] >= 0
    if (a === b && b === c) continue
    // The corner that disagrees with the other two, and the edges before and after it.
    const odd = b === c ? 0 : a === c ? 1 : 2
    const before = triangleEdges[i + ((odd + 2) % 3)]
    const after = triangleEdges[i + odd]
    const isOddPositive = odd === 0 ? a : odd === 1 ? b : c
    const [from, to] = isOddPositive ? [before, after] : [after, before]
    onward[2 * from] = to
    onward[2 * from + 1] = i / 3
    crossed.push(from)
  }
  return { onward, crossed }
}
