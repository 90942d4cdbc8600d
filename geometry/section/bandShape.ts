import { frontSide } from "../scalp/frontSide"
import type { Head } from "../scalp/head"
import { smoothLine } from "../surface/spline"
import { type MeasuredPath, measurePath, pointAlong, slopeAlong } from "../surface/surfacePath"
import { headingLeft, type Walker } from "../surface/surfaceWalk"
import { cross, normalize, scale } from "../surface/vec3"
import type { BandShape } from "./bandGrid"
import { signedAreasCm2 } from "./cellAreas"
import { ownShares } from "./ownShares"
import { growRib, type Rib } from "./rib"
import type { Band } from "./section"

/** How fine a grid is: the longest step along and across in mm, the fewest and most stations and layers, and how finely the line is cut. */
export type Grain = {
  alongMm: number
  stations: readonly [number, number]
  acrossMm: number
  layers: readonly [number, number]
  splinePieces: number
}

/** Fine enough that a grid ten times finer changes an area by less than 0.2 %. */
export const usualGrain: Grain = {
  alongMm: 1.75,
  stations: [8, 96],
  acrossMm: 5,
  layers: [2, 24],
  splinePieces: 8,
}

const remembered = new WeakMap<Head, WeakMap<Band, Map<number, BandShape>>>()

/** The grid of a band on a head, or of no more than so many mm of its depth, remembered for as long as both live. */
export function bandShape(band: Band, head: Head, mostMm = Number.POSITIVE_INFINITY): BandShape {
  const onHead = remembered.get(head) ?? new WeakMap<Band, Map<number, BandShape>>()
  remembered.set(head, onHead)
  const ofBand = onHead.get(band) ?? new Map<number, BandShape>()
  onHead.set(band, ofBand)
  const isWhole = mostMm >= Math.max(band.depthMm.start, band.depthMm.end)
  const key = isWhole ? Number.POSITIVE_INFINITY : mostMm
  const shape = ofBand.get(key) ?? layOutBand(band, head, usualGrain, key)
  ofBand.set(key, shape)
  return shape
}

/** Lay a band out afresh at any fineness. The parting is taken as the smooth line through its points. */
export function layOutBand(
  band: Band,
  head: Head,
  grain: Grain,
  mostMm = Number.POSITIVE_INFINITY,
): BandShape {
  const line = measurePath(head.surface, smoothLine(band.parting, grain.splinePieces))
  const { start, end } = band.depthMm
  const deepest = Math.min(mostMm, Math.max(start, end))
  const layers = within(grain.layers, Math.ceil(deepest / grain.acrossMm) + 1)
  const front = frontSide(band.parting, head)
  const side = band.taken === "front" ? front : -front
  const isClear = edgeAlong(head, line) > deepest
  const ribAt = (share: number): StandingRib => {
    const alongMm = line.lengthMm * share
    const wantedMm = Math.min(mostMm, start + (end - start) * share)
    return {
      share,
      alongMm,
      wantedMm,
      ...growRib(head, footOf(head, line, alongMm, side), { depthMm: wantedMm, count: layers, isClear }),
    }
  }
  const stations = within(grain.stations, Math.ceil(line.lengthMm / grain.alongMm) + 1)
  return gridOf(standRibs(stations, ribAt), layers, head, line)
}

/** Places of a parting that are asked how far they are from the hairline. */
const asked = 4

/** No place of a parting is nearer to the hairline than this, mm: no distance changes by more than the way. */
function edgeAlong({ surface, hairline }: Head, line: MeasuredPath): number {
  const stepMm = line.lengthMm / asked
  let leastMm = Number.POSITIVE_INFINITY
  for (let i = 0; i < asked; i++)
    leastMm = Math.min(leastMm, hairline.distanceMm(surface.pointAt(pointAlong(line, (i + 0.5) * stepMm))))
  return leastMm - stepMm / 2
}

const within = ([least, most]: readonly [number, number], count: number) =>
  Math.min(most, Math.max(least, count))

type StandingRib = Rib & { share: number; alongMm: number; wantedMm: number }

/** Ribs at even steps, and between two of which the hairline cuts off very different lengths more, as close as a quarter of a mm. */
function standRibs(stations: number, ribAt: (share: number) => StandingRib): StandingRib[] {
  const ribs: StandingRib[] = []
  const addUpTo = (next: StandingRib, halvings: number) => {
    const before = ribs.at(-1)
    if (before && halvings > 0 && isCutAskew(before, next)) {
      addUpTo(ribAt((before.share + next.share) / 2), halvings - 1)
      addUpTo(next, halvings - 1)
    } else ribs.push(next)
  }
  for (let station = 0; station < stations; station++) addUpTo(ribAt(station / (stations - 1)), mostHalvings)
  return ribs
}

const mostHalvings = 3
const slightCutMm = 0.2

/** Where the hairline begins to cut between two ribs, or cuts them nearly along. */
function isCutAskew(a: StandingRib, b: StandingRib): boolean {
  const [cutA, cutB] = [a.wantedMm - a.depthMm + a.gapMm, b.wantedMm - b.depthMm + b.gapMm]
  const isBegun = Math.min(cutA, cutB) === 0 && Math.max(cutA, cutB) > slightCutMm
  return isBegun || Math.abs(cutA - cutB) > 2 * (b.alongMm - a.alongMm)
}

function gridOf(ribs: readonly StandingRib[], layers: number, head: Head, line: MeasuredPath): BandShape {
  const count = ribs.length * layers
  const grid = {
    stations: ribs.length,
    layers,
    points: new Float64Array(3 * count),
    normals: new Float64Array(3 * count),
    alongMm: Float64Array.from(ribs, ({ alongMm }) => alongMm),
    depthMm: Float64Array.from(ribs, ({ depthMm }) => depthMm),
  }
  for (let i = 0; i < count; i++) {
    const at = ribs[Math.floor(i / layers)].points[i % layers]
    grid.points.set(head.surface.pointAt(at), 3 * i)
    const [along, across] = head.surface.tangentsAt(at)
    grid.normals.set(normalize(cross(along, across)), 3 * i)
  }
  const areasCm2 = signedAreasCm2(grid)
  const shares = ownShares({ ...grid, areasCm2 }, ribs, head, line)
  return { ...grid, areasCm2: areasCm2.map((area, cell) => Math.max(0, area) * (shares ? shares[cell] : 1)) }
}

/** Where a rib starts, heading square to the parting. */
function footOf({ surface }: Head, line: MeasuredPath, alongMm: number, side: number): Walker {
  const at = pointAlong(line, alongMm)
  const [du, dv] = slopeAlong(line, alongMm)
  return { at, heading: scale(headingLeft(surface, at, du, dv), side) }
}
