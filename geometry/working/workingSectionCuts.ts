import type { Head } from "../scalp/head"
import type { BandShape } from "../section/bandGrid"
import { bandShape } from "../section/bandShape"
import type { Band } from "../section/section"
import type { SurfacePoint } from "../surface/frames"
import { lerp, type Vec3 } from "../surface/vec3"
import { areaAt, type Division } from "./workingSections"

/** A part of a parting, in shares of its length, whose hair lies in one area of a divided head. */
export type PartingCut = { area: number; from: number; to: number }

/**
 * Where dividing partings cut a band: its parting from start to end in parts, each with the area that the middle of the
 * band lies in there. A band that a dividing parting runs along is cut nowhere.
 */
export function cutsOf(band: Band, head: Head, division: Division): PartingCut[] {
  const shape = bandShape(band, head)
  const areaOn = (station: number) => areaAt(division, middleAt(shape, head, station))
  const cuts: PartingCut[] = []
  const last = shape.stations - 1
  for (let station = 0; station <= last; station++) {
    const before = cuts.at(-1)
    const area = areaOn(station)
    if (before && (area === before.area || area < 0)) before.to = station / last
    else {
      const from = before ? edgeBetween(station - 1, (middle) => areaOn(middle) === before.area) / last : 0
      if (before) before.to = from
      cuts.push({ area, from, to: station / last })
    }
  }
  return cuts
}

/** The middle of a band at a share of its parting. */
export function bandPlace(band: Band, head: Head, share: number): SurfacePoint {
  const shape = bandShape(band, head)
  return middleAt(shape, head, share * (shape.stations - 1))
}

/** Where between a station and the next a place stops being inside, good to a two-hundredth of the step. */
function edgeBetween(station: number, isInside: (station: number) => boolean): number {
  let [low, high] = [station, station + 1]
  for (let i = 0; i < 8; i++) {
    const middle = (low + high) / 2
    if (isInside(middle)) low = middle
    else high = middle
  }
  return low
}

/** The middle of a band's rib, at a station or a share between two. */
function middleAt(shape: BandShape, { surface }: Head, station: number): SurfacePoint {
  const before = Math.min(Math.floor(station), shape.stations - 2)
  return surface.toSurface(lerp(ribMiddle(shape, before), ribMiddle(shape, before + 1), station - before))
}

function ribMiddle({ points, layers }: BandShape, station: number): Vec3 {
  const at = (layer: number): Vec3 => {
    const i = 3 * (station * layers + layer)
    return [points[i], points[i + 1], points[i + 2]]
  }
  const middle = (layers - 1) / 2
  return lerp(at(Math.floor(middle)), at(Math.ceil(middle)), 0.5)
}
