import { frontSide } from "../scalp/frontSide"
import type { Head } from "../scalp/head"
import { surfacePoint } from "../surface/frames"
import { alongCurve, type SmoothCurve, smoothCurve } from "../surface/smoothCurve"
import { faceSideways, type Moving, newMoving } from "../surface/surfaceWalk"
import type { BandShape } from "./bandGrid"
import { signedAreasCm2 } from "./cellAreas"
import { ownShares } from "./ownShares"
import { type Footing, growRib, type Rib } from "./rib"
import type { Band } from "./section"

/** How fine a grid is: the longest step along and across in mm, the fewest and most stations and layers. */
export type Grain = {
  alongMm: number
  stations: readonly [number, number]
  acrossMm: number
  layers: readonly [number, number]
}

/** Fine enough that a grid ten times finer changes an area by less than 0.2 %. */
export const usualGrain: Grain = {
  alongMm: 1.75,
  stations: [8, 96],
  acrossMm: 5,
  layers: [2, 24],
}

const remembered = new WeakMap<Head, WeakMap<Band, Map<number, BandShape>>>()

/** The grid of a band on a head, or of no more than so many mm of its depth, remembered for as long as both live. */
export function bandShape(band: Band, head: Head, mostMm = Number.POSITIVE_INFINITY): BandShape {
  const isWhole = mostMm >= Math.max(band.depthMm.start, band.depthMm.end)
  const key = isWhole ? Number.POSITIVE_INFINITY : mostMm
  const known = remembered.get(head)?.get(band)?.get(key)
  if (known) return known
  const onHead = remembered.get(head) ?? new WeakMap<Band, Map<number, BandShape>>()
  remembered.set(head, onHead)
  const ofBand = onHead.get(band) ?? new Map<number, BandShape>()
  onHead.set(band, ofBand)
  const shape = layOutBand(band, head, usualGrain, key)
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
  const line = smoothCurve(head.surface, band.parting)
  const { start, end } = band.depthMm
  const deepest = Math.min(mostMm, Math.max(start, end))
  const layers = within(grain.layers, Math.ceil(deepest / grain.acrossMm) + 1)
  const front = frontSide(band.parting, head)
  const side = band.taken === "front" ? front : -front
  const isClear = edgeAlong(head, line) > deepest
  const on: Footing = { foot: newMoving(), walker: newMoving() }
  const ribAt = (share: number): StandingRib => {
    const alongMm = line.lengthMm * share
    const wantedMm = Math.min(mostMm, start + (end - start) * share)
    setFoot(head, line, alongMm, side, on.foot)
    return { share, alongMm, wantedMm, rib: growRib(head, on, { depthMm: wantedMm, count: layers, isClear }) }
  }
  const stations = within(grain.stations, Math.ceil(line.lengthMm / grain.alongMm) + 1)
  return gridOf(standRibs(stations, ribAt), layers, head, band)
}

/** Places of a parting that are asked how far they are from the hairline. */
const asked = 4

/** No place of a parting is nearer to the hairline than this, mm: no distance changes by more than the way. */
function edgeAlong({ surface, hairline }: Head, line: SmoothCurve): number {
  const stepMm = line.lengthMm / asked
  let leastMm = Number.POSITIVE_INFINITY
  for (let i = 0; i < asked; i++) {
    const { u, v } = alongCurve(line, (i + 0.5) * stepMm)
    leastMm = Math.min(leastMm, hairline.distanceMm(surface.pointAt(surfacePoint(u, v))))
  }
  return leastMm - stepMm / 2
}

const within = ([least, most]: readonly [number, number], count: number) =>
  Math.min(most, Math.max(least, count))

type StandingRib = { rib: Rib; share: number; alongMm: number; wantedMm: number }

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
  const [cutA, cutB] = [cutMm(a), cutMm(b)]
  const isBegun = Math.min(cutA, cutB) === 0 && Math.max(cutA, cutB) > slightCutMm
  return isBegun || Math.abs(cutA - cutB) > 2 * (b.alongMm - a.alongMm)
}

/** How much of a rib is not hair, mm. */
const cutMm = ({ wantedMm, rib }: StandingRib) => wantedMm - rib.depthMm + rib.gapMm

function gridOf(ribs: readonly StandingRib[], layers: number, head: Head, { parting }: Band): BandShape {
  const stations = ribs.length
  const count = stations * layers
  const [points, normals, places, alongMm, depthMm] = rowsOf([
    3 * count,
    3 * count,
    2 * count,
    stations,
    stations,
  ])
  for (let station = 0, i = 0; station < stations; station++) {
    const { rib } = ribs[station]
    alongMm[station] = ribs[station].alongMm
    depthMm[station] = rib.depthMm
    for (let layer = 0; layer < layers; layer++, i++) {
      for (let axis = 0; axis < 3; axis++) {
        points[3 * i + axis] = rib.skin[6 * layer + axis]
        normals[3 * i + axis] = rib.skin[6 * layer + 3 + axis]
      }
      const at = rib.points[layer]
      places[2 * i] = at[0]
      places[2 * i + 1] = at[1]
    }
  }
  const grid = { stations, layers, points, places, normals, alongMm, depthMm }
  const areasCm2 = signedAreasCm2(grid)
  const shares = ownShares(
    { ...grid, areasCm2 },
    ribs.map(({ rib }) => rib),
    head,
    parting,
  )
  for (let cell = 0; cell < areasCm2.length; cell++)
    areasCm2[cell] = Math.max(0, areasCm2[cell]) * (shares ? shares[cell] : 1)
  return { ...grid, areasCm2 }
}

/** Rows of so many numbers, in one block: to ask for a block takes as long as to fill it. */
function rowsOf(lengths: readonly number[]): Float64Array[] {
  const block = new Float64Array(lengths.reduce((sum, length) => sum + length, 0))
  let from = 0
  return lengths.map((length) => {
    from += length
    return block.subarray(from - length, from)
  })
}

/** Put a rib's foot on the line, heading square to it. */
function setFoot({ surface }: Head, line: SmoothCurve, alongMm: number, side: number, foot: Moving) {
  const { u, v, du, dv } = alongCurve(line, alongMm)
  foot.u = u
  foot.v = v
  surface.frameAt(u, v, foot.frame)
  faceSideways(foot, du, dv, side)
}
