import { densityAt, type Hair } from "../hair/hair"
import type { TradeFigures } from "../hair/tradeFigures"
import type { Head } from "../scalp/head"
import { mapReach } from "../scalp/headSurface"
import { type SurfacePoint, surfacePoint } from "../surface/frames"
import { cross, length } from "../surface/vec3"
import { hashRandom } from "./hashRandom"

/** Where strands grow: about so many places of the scalp, as dense as the hair is there, each for so many hairs. */
export type Roots = { at: SurfacePoint[]; hairsEach: number }

/** Steps of a sequence that fills a square evenly: powers of the plastic number (Roberts 2018). */
const [stepU, stepV] = [0.7548776662466927, 0.5698402909980532]

/**
 * Goes evenly over the map and keeps each place by lot, the likelier the more hair grows on its share of the scalp;
 * another seed gives another head of the same hair.
 */
export function sampleRoots(
  head: Head,
  hair: Hair,
  figures: TradeFigures,
  { count, seed }: { count: number; seed: number },
): Roots {
  const places = evenPlaces(Math.round(count * placesEach), seed)
  const shareOfMap = (2 * mapReach) ** 2 / places.length
  const hairs = Float64Array.from(places, (at) =>
    head.hairline.contains(at) ? hairsPerRadian2(head, hair, figures, at) * shareOfMap : 0,
  )
  const hairsEach = hairs.reduce((sum, each) => sum + each, 0) / count
  return { at: keepByShare(places, hairs, hairsEach, seed), hairsEach }
}

const placesEach = 7

const evenPlaces = (count: number, seed: number) => {
  const [fromU, fromV] = [hashRandom(seed, 1), hashRandom(seed, 2)]
  return Array.from({ length: count }, (_, i) =>
    surfacePoint(
      (((fromU + i * stepU) % 1) * 2 - 1) * mapReach,
      (((fromV + i * stepV) % 1) * 2 - 1) * mapReach,
    ),
  )
}

const hairsPerRadian2 = (head: Head, hair: Hair, figures: TradeFigures, at: SurfacePoint) =>
  (densityAt(head, hair, figures, head.surface.pointAt(at)) * length(cross(...head.surface.tangentsAt(at)))) /
  100

const keepByShare = (places: SurfacePoint[], hairs: Float64Array, hairsEach: number, seed: number) =>
  places.filter((_, i) => hashRandom(seed + 3, i) < hairs[i] / hairsEach)
