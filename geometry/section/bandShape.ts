import { frontSide } from "../scalp/frontSide"
import type { Head } from "../scalp/head"
import type { SurfacePoint } from "../surface/frames"
import { smoothLine } from "../surface/spline"
import { type MeasuredPath, measurePath, pointAlong, slopeAlong } from "../surface/surfacePath"
import { headingLeft, type Walker } from "../surface/surfaceWalk"
import { cross, normalize, scale } from "../surface/vec3"
import { growRib } from "./rib"
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

/** How fine a grid is: the longest step along and across in mm, the fewest and most stations and layers, and how finely the line is cut. */
export type Grain = {
  alongMm: number
  stations: readonly [number, number]
  acrossMm: number
  layers: readonly [number, number]
  splinePieces: number
}

/** Fine enough that a grid ten times finer changes an area by less than 0.2 %, unless the hairline cuts it askew. */
export const usualGrain: Grain = {
  alongMm: 2,
  stations: [8, 96],
  acrossMm: 5,
  layers: [2, 24],
  splinePieces: 8,
}

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

/** Lay a band out afresh at any fineness. The parting is taken as the smooth line through its points. */
export function layOutBand(band: Band, head: Head, grain: Grain): BandShape {
  const line = measurePath(head.surface, smoothLine(band.parting, grain.splinePieces))
  const stations = within(grain.stations, Math.ceil(line.lengthMm / grain.alongMm) + 1)
  const { start, end } = band.depthMm
  const layers = within(grain.layers, Math.ceil(Math.max(start, end) / grain.acrossMm) + 1)
  const front = frontSide(band.parting, head)
  const side = band.taken === "front" ? front : -front
  const shape = emptyShape(stations, layers)
  for (let station = 0; station < stations; station++) {
    const share = station / (stations - 1)
    const foot = footOf(head, line, line.lengthMm * share, side)
    const rib = growRib(head, foot, start + (end - start) * share, layers)
    shape.alongMm[station] = line.lengthMm * share
    shape.depthMm[station] = rib.depthMm
    rib.points.forEach((at, layer) => {
      setGridPoint(shape, head, station * layers + layer, at)
    })
  }
  return shape
}

const within = ([least, most]: readonly [number, number], count: number) =>
  Math.min(most, Math.max(least, count))

const emptyShape = (stations: number, layers: number): BandShape => ({
  stations,
  layers,
  points: new Float64Array(3 * stations * layers),
  normals: new Float64Array(3 * stations * layers),
  alongMm: new Float64Array(stations),
  depthMm: new Float64Array(stations),
})

/** Where a rib starts, heading square to the parting. */
function footOf({ surface }: Head, line: MeasuredPath, alongMm: number, side: number): Walker {
  const at = pointAlong(line, alongMm)
  const [du, dv] = slopeAlong(line, alongMm)
  return { at, heading: scale(headingLeft(surface, at, du, dv), side) }
}

function setGridPoint({ points, normals }: BandShape, { surface }: Head, index: number, at: SurfacePoint) {
  points.set(surface.pointAt(at), 3 * index)
  const [along, across] = surface.tangentsAt(at)
  normals.set(normalize(cross(along, across)), 3 * index)
}
