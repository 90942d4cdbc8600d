import type { SurfacePoint } from "../frames"
import { frontSide } from "../frontSide"
import type { Head } from "../head/head"
import { shareInside } from "../longestRunInside"
import { leftOf, measurePath, resampleMeasured, type SurfacePath } from "../surfacePath"
import { type Walker, walk } from "../surfaceWalk"
import { cross, normalize, scale } from "../vec3"
import type { Band } from "./section"

/**
 * A band of hair as a grid on the scalp: ribs (stations) square to the parting, each with the same number of
 * layers. The one grid that figures are summed over and pictures drawn from. mm, head frame.
 */
export type BandShape = {
  stations: number
  layers: number
  /** x, y, z of each grid point, from index 3 x (station x layers + layer); layer 0 lies on the parting. */
  points: Float64Array
  /** Outward unit normals, laid out like the points. */
  normals: Float64Array
  /** Of each station, how far along the parting it stands. */
  alongMm: Float64Array
  /** Of each station, how deep the band goes there: what is asked for, or less where the hairline ends it. */
  depthMm: Float64Array
}

/** How fine a grid is: the longest step along and across in mm, and the fewest and most of each. */
export type Grain = {
  alongMm: number
  stations: [number, number]
  acrossMm: number
  layers: [number, number]
}

const usualGrain: Grain = { alongMm: 3, stations: [8, 64], acrossMm: 5, layers: [2, 24] }

const remembered = new WeakMap<Head, WeakMap<Band, BandShape>>()

/** The grid of a band on a head, remembered for as long as both live. */
export function bandShape(band: Band, head: Head): BandShape {
  const onHead = remembered.get(head) ?? new WeakMap<Band, BandShape>()
  remembered.set(head, onHead)
  const known = onHead.get(band)
  if (known) return known
  const shape = layOutBand(band, head, usualGrain)
  onHead.set(band, shape)
  return shape
}

/** Lay a band out afresh at any fineness. */
export function layOutBand(band: Band, head: Head, grain: Grain): BandShape {
  const measured = measurePath(head.surface, band.parting)
  const stations = within(grain.stations, Math.ceil(measured.lengthMm / grain.alongMm) + 1)
  const { start, end } = band.depthMm
  const layers = within(grain.layers, Math.ceil(Math.max(start, end) / grain.acrossMm) + 1)
  const path = resampleMeasured(measured, stations)
  const front = frontSide(band.parting, head)
  const shape = emptyShape(stations, layers)
  for (let station = 0; station < stations; station++) {
    const share = station / (stations - 1)
    const rib = growRib(head, footOf(head, path, station, band.taken === "front" ? front : -front), {
      depthMm: start + (end - start) * share,
      layers,
    })
    shape.alongMm[station] = measured.lengthMm * share
    shape.depthMm[station] = rib.depthMm
    for (let layer = 0; layer < layers; layer++)
      setGridPoint(shape, head, station * layers + layer, rib.points[layer])
  }
  return shape
}

const within = ([least, most]: [number, number], count: number) => Math.min(most, Math.max(least, count))

const emptyShape = (stations: number, layers: number): BandShape => ({
  stations,
  layers,
  points: new Float64Array(3 * stations * layers),
  normals: new Float64Array(3 * stations * layers),
  alongMm: new Float64Array(stations),
  depthMm: new Float64Array(stations),
})

function footOf({ surface }: Head, path: SurfacePath, station: number, side: number): Walker {
  return { at: path[station], heading: scale(leftOf(surface, path, station), side) }
}

type Rib = { depthMm: number; points: SurfacePoint[] }

/** Walk a rib from its foot; where it leaves the hair, walk it again in shorter steps that end on the hairline. */
function growRib(head: Head, foot: Walker, { depthMm, layers }: { depthMm: number; layers: number }): Rib {
  const points = [foot.at]
  const stepMm = depthMm / (layers - 1)
  let walker = foot
  for (let layer = 1; layer < layers; layer++) {
    const next = walk(head.surface, walker, stepMm)
    if (!head.hairline.contains(next.at)) {
      const share = shareInside(head.hairline, walker.at, next.at)
      return shortRib(head, foot, { depthMm: stepMm * (layer - 1 + share), layers })
    }
    points.push(next.at)
    walker = next
  }
  return { depthMm, points }
}

function shortRib(
  { surface }: Head,
  foot: Walker,
  { depthMm, layers }: { depthMm: number; layers: number },
): Rib {
  const points = [foot.at]
  let walker = foot
  for (let layer = 1; layer < layers; layer++) {
    walker = walk(surface, walker, depthMm / (layers - 1))
    points.push(walker.at)
  }
  return { depthMm, points }
}

function setGridPoint({ points, normals }: BandShape, { surface }: Head, index: number, at: SurfacePoint) {
  points.set(surface.pointAt(at), 3 * index)
  const [along, across] = surface.tangentsAt(at)
  normals.set(normalize(cross(along, across)), 3 * index)
}
