import type { Field } from "../scalp/fields"
import type { Feature } from "./headLine"
import type { Mesh } from "./mesh/mesh"
import { runsOf } from "./runs"
import { zeroLoops } from "./zeroLoops"

/** The crease behind an ear, where its mesh comes out of the head, in the mesh's frame and mm. */
export function earCrease(ear: Mesh, headDistance: Field): Feature {
  const heights = Float64Array.from({ length: ear.points.length / 3 }, (_, i) =>
    headDistance(ear.points[3 * i], ear.points[3 * i + 1], ear.points[3 * i + 2]),
  )
  const [loop] = zeroLoops(ear, heights)
  const crossing = (values: Float64Array, i: number, axis: number) => {
    const [a, b] = [ear.edges[2 * loop.edges[i]], ear.edges[2 * loop.edges[i] + 1]]
    return values[3 * a + axis] + (values[3 * b + axis] - values[3 * a + axis]) * loop.shares[i]
  }
  const facesBack = loop.edges.map((_, i) => crossing(ear.normals, i, 1) < 0)
  const behind = runsOf(facesBack, true).filter((run) => run.value)
  const longest = behind.reduce((best, run) => (run.to - run.from > best.to - best.from ? run : best))
  const along = (values: Float64Array) =>
    Float64Array.from({ length: 3 * (longest.to - longest.from + 1) }, (_, k) =>
      crossing(values, (longest.from + Math.floor(k / 3)) % loop.edges.length, k % 3),
    )
  return { part: "ear", weight: "fine", points: along(ear.points), normals: along(ear.normals) }
}
