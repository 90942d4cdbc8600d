import type { Grid } from "../../geometry/section/bandGrid"
import { type ViewPoint, viewPoint } from "../../geometry/surface/frames"
import type { Surface } from "../../geometry/surface/surface"
import type { Vec3 } from "../../geometry/surface/vec3"
import type { OrthographicView, View } from "../../geometry/surface/views"

/** Says whether a nearer part of the head or an ear hides a head point, lying more than a margin nearer (mm). */
export type Hides = (point: Vec3, marginMm?: number) => boolean

/** A band laid on a page: view mm for each grid point, and which stations the viewer can see. */
export type FlatBand = {
  shape: Grid
  xy: Float64Array
  visible: Uint8Array
}

const grazing = 0.04

/** Lay a band's grid on a page. */
export function flattenBand(shape: Grid, view: View, surface: Surface, hides: Hides): FlatBand {
  const count = shape.stations * shape.layers
  const xy = new Float64Array(count * 2)
  if (view.kind === "unrolled") {
    for (let i = 0; i < count; i++) {
      const at = surface.toSurface(pointOf(shape.points, i))
      xy[2 * i] = at[0] * view.radiusMm
      xy[2 * i + 1] = at[1] * view.radiusMm
    }
    return { shape, xy, visible: new Uint8Array(shape.stations).fill(1) }
  }
  projectAll(shape.points, view, xy)
  return { shape, xy, visible: visibleStations(shape, view, hides) }
}

const pointOf = (points: Float64Array, i: number): Vec3 => [
  points[3 * i],
  points[3 * i + 1],
  points[3 * i + 2],
]

function projectAll(points: Float64Array, { right, up }: OrthographicView, xy: Float64Array) {
  for (let i = 0, j = 0; j < xy.length; i += 3, j += 2) {
    xy[j] = points[i] * right[0] + points[i + 1] * right[1] + points[i + 2] * right[2]
    xy[j + 1] = points[i] * up[0] + points[i + 1] * up[1] + points[i + 2] * up[2]
  }
}

function visibleStations(shape: Grid, { toward }: OrthographicView, hides: Hides) {
  const visible = new Uint8Array(shape.stations)
  const { normals, layers } = shape
  const faces = (i: number) =>
    normals[3 * i] * toward[0] + normals[3 * i + 1] * toward[1] + normals[3 * i + 2] * toward[2] > grazing
  for (let station = 0; station < shape.stations; station++) {
    const near = station * layers
    const far = near + layers - 1
    if (faces(near) && faces(far) && !hides(pointOf(shape.points, near))) visible[station] = 1
  }
  return visible
}

/** The stretches of stations that can be seen, each of at least two stations. */
export function visibleRuns({ visible }: FlatBand): [first: number, last: number][] {
  const runs: [number, number][] = []
  for (let station = 0; station < visible.length; station++) {
    if (!visible[station]) continue
    const first = station
    while (station + 1 < visible.length && visible[station + 1]) station += 1
    if (station > first) runs.push([first, station])
  }
  return runs
}

/** The page point of one grid point. */
export function gridPoint({ shape, xy }: FlatBand, station: number, layer: number): ViewPoint {
  const i = 2 * (station * shape.layers + layer)
  return viewPoint(xy[i], xy[i + 1])
}

/** The page point `alongMm` along the parting and `depthShare` of the way across; null where it is out of sight. */
export function bandPoint(flat: FlatBand, alongMm: number, depthShare: number): ViewPoint | null {
  const { alongMm: along, stations, layers } = flat.shape
  const station = Math.min(stationBefore(along, alongMm), stations - 2)
  if (!flat.visible[station] || !flat.visible[station + 1]) return null
  const s = Math.max(0, Math.min(1, (alongMm - along[station]) / (along[station + 1] - along[station] || 1)))
  const across = depthShare * (layers - 1)
  const layer = Math.min(Math.floor(across), layers - 2)
  const t = across - layer
  const corner = 2 * (station * layers + layer)
  const next = corner + 2 * layers
  const { xy } = flat
  const blend = (i: number) =>
    (xy[corner + i] * (1 - t) + xy[corner + 2 + i] * t) * (1 - s) +
    (xy[next + i] * (1 - t) + xy[next + 2 + i] * t) * s
  return viewPoint(blend(0), blend(1))
}

function stationBefore(along: Float64Array, alongMm: number) {
  let [low, high] = [0, along.length - 1]
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if (along[middle] <= alongMm) low = middle
    else high = middle
  }
  return low
}
