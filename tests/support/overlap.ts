import { type SurfacePoint, surfacePoint } from "../../geometry/frames"
import type { Head } from "../../geometry/head/head"
import { bandShape } from "../../geometry/section/bandShape"
import type { Band } from "../../geometry/section/section"
import { areaElement, contains } from "../../geometry/surfacePatch"

/** A band's outline on the scalp map, with the head it lies on. */
export type MapRing = { ring: readonly SurfacePoint[]; head: Head }

export function bandRingOnMap(band: Band, head: Head): MapRing {
  const { points, stations, layers } = bandShape(band, head)
  const at = (station: number, layer: number) => {
    const i = 3 * (station * layers + layer)
    return head.surface.toSurface([points[i], points[i + 1], points[i + 2]])
  }
  const along = (layer: number) => Array.from({ length: stations }, (_, station) => at(station, layer))
  return { ring: [...along(0), ...along(layers - 1).toReversed()], head }
}

const stepRadians = 0.012

/** Scalp that two outlines share, cm2, summed over small cells of the map. */
export function sharedCm2(a: MapRing, b: MapRing): number {
  const [boxA, boxB] = [boxOf(a.ring), boxOf(b.ring)]
  const [low, high] = [
    [Math.max(boxA.low[0], boxB.low[0]), Math.max(boxA.low[1], boxB.low[1])],
    [Math.min(boxA.high[0], boxB.high[0]), Math.min(boxA.high[1], boxB.high[1])],
  ]
  let cm2 = 0
  for (let u = low[0]; u < high[0]; u += stepRadians)
    for (let v = low[1]; v < high[1]; v += stepRadians) {
      const at = surfacePoint(u, v)
      if (contains(a.ring, at) && contains(b.ring, at))
        cm2 += (stepRadians ** 2 * areaElement(a.head.surface, at)) / 100
    }
  return cm2
}

const boxOf = (ring: readonly SurfacePoint[]) => ({
  low: [Math.min(...ring.map(([u]) => u)), Math.min(...ring.map(([, v]) => v))],
  high: [Math.max(...ring.map(([u]) => u)), Math.max(...ring.map(([, v]) => v))],
})
