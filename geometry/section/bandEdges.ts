import type { Head } from "../scalp/head"
import type { SurfacePath } from "../surface/surfacePath"
import { bandShape } from "./bandShape"
import type { Band } from "./section"

/** The edges of a band on the scalp: the one toward the face and the one away from it, each in the sense of the parting. */
export function bandEdges(band: Band, head: Head): { front: SurfacePath; back: SurfacePath } {
  const { points, stations, layers } = bandShape(band, head)
  const edge = (layer: number) =>
    Array.from({ length: stations }, (_, station) => {
      const i = 3 * (station * layers + layer)
      return head.surface.toSurface([points[i], points[i + 1], points[i + 2]])
    })
  const [parting, far] = [edge(0), edge(layers - 1)]
  return band.taken === "front" ? { front: far, back: parting } : { front: parting, back: far }
}
