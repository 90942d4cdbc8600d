import type { Head } from "../scalp/head"
import { bandShape } from "../section/bandShape"
import { type BandSpans, bandSpans } from "../section/bandSpans"
import { type Coating, coatingOf } from "../section/coating"
import type { Stitch } from "../section/kindRow"
import type { Section } from "../section/section"
import { dipMm, heldShare, stitches, takenShare } from "../section/sectionKinds"
import type { SurfacePoint } from "../surface/frames"
import { distance, dot, subtract, type Vec3 } from "../surface/vec3"
import { covers } from "./covers"
import type { Strands } from "./grow"
import { hashRandom } from "./hashRandom"

/** Of each strand the stretch that is lightened, mm from the root, and the place of the section that took it; -1 for none. */
export type Lightened = { fromMm: Float32Array; toMm: Float32Array; by: Int16Array }

/** Gives each strand to the first section, in order of application, that takes it by its share; what one holds no later one has. */
export function lightenStrands(
  { count, lengthsMm, roots }: Strands,
  sections: readonly Section[],
  head: Head,
): Lightened {
  const takers = sections.map((section) => takerOf(section, head))
  const light = {
    fromMm: new Float32Array(count),
    toMm: new Float32Array(count),
    by: new Int16Array(count).fill(-1),
  }
  for (let i = 0; i < count; i++) {
    const by = takenBy(takers, roots[i], head, i)
    if (by < 0) continue
    const { coating, parting } = takers[by]
    const { alongMm } = parting
    const along = alongAt(parting, head.surface.pointAt(roots[i])) / alongMm[alongMm.length - 1]
    const { to, startCm } = coating
    light.by[i] = by
    light.fromMm[i] = Math.max(lengthsMm[i] * coating.from(along), 10 * startCm)
    light.toMm[i] = lengthsMm[i] * to
  }
  return light
}

type Taker = {
  spans: BandSpans
  coating: Coating
  /** Of the hair within its stitches, what is coated, and what no later section has. */
  taken: number
  held: number
  parting: { points: Vec3[]; alongMm: Float64Array }
  picked: Stitch[]
}

function takerOf(section: Section, head: Head): Taker {
  const { alongMm, points, stations, layers } = bandShape(section, head)
  return {
    spans: bandSpans(section, head, dipMm(section)),
    coating: coatingOf(section),
    taken: takenShare(section),
    held: heldShare(section),
    parting: { points: Array.from({ length: stations }, (_, i) => pointAt(points, i * layers)), alongMm },
    picked: stitches(section, alongMm[stations - 1]),
  }
}

const pointAt = (points: Float64Array, i: number): Vec3 => [
  points[3 * i],
  points[3 * i + 1],
  points[3 * i + 2],
]

function takenBy(takers: readonly Taker[], root: SurfacePoint, head: Head, strand: number): number {
  for (const [place, taker] of takers.entries()) {
    if (!covers(taker.spans, root[0], root[1]) || isBetween(taker, root, head)) continue
    const lot = hashRandom(strand, place + 101)
    if (lot < taker.taken) return place
    if (lot < taker.held) return -1
  }
  return -1
}

/** Whether a root stands in the gap between two stitches. */
function isBetween({ picked, parting }: Taker, root: SurfacePoint, head: Head): boolean {
  if (picked.length === 0 || (picked.length === 1 && picked[0].depthShare === 1)) return false
  const alongMm = alongAt(parting, head.surface.pointAt(root))
  return !picked.some(({ fromMm, toMm }) => alongMm >= fromMm && alongMm <= toMm)
}

/** How far along a parting, mm, a place stands beside it. */
function alongAt({ points, alongMm }: Taker["parting"], place: Vec3): number {
  let [nearest, along] = [Number.POSITIVE_INFINITY, 0]
  for (let i = 1; i < points.length; i++) {
    const piece = subtract(points[i], points[i - 1])
    const away = subtract(place, points[i - 1])
    const share = Math.min(1, Math.max(0, dot(away, piece) / dot(piece, piece)))
    const apart = distance(away, [piece[0] * share, piece[1] * share, piece[2] * share])
    if (apart < nearest) {
      nearest = apart
      along = alongMm[i - 1] + share * (alongMm[i] - alongMm[i - 1])
    }
  }
  return along
}
