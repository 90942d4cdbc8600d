import type { Head } from "../scalp/head"
import { nearestOnPath } from "../surface/nearestOnPath"
import { smoothLine } from "../surface/spline"
import { measurePath, type SurfacePath } from "../surface/surfacePath"
import { lerp, type Vec3 } from "../surface/vec3"
import type { BandShape } from "./bandGrid"
import { cornerOf } from "./cellAreas"
import type { Gap, Rib } from "./rib"

/**
 * Of each cell of a band the share that counts, or null when all of every cell does. A cell counts less where its ribs
 * cross bare skin, and where the band comes to lie over itself: there each place belongs to the nearest rib alone.
 */
export function ownShares(
  shape: BandShape,
  ribs: readonly Rib[],
  head: Head,
  parting: SurfacePath,
): Float64Array | null {
  const isFolded = isOverItself(shape)
  if (!isFolded && ribs.every(({ gaps }) => gaps === null)) return null
  const shares = shape.areasCm2.map((_, cell) => hairShare(cell, shape.layers, ribs))
  return isFolded ? nearestOnly(shape, shares, head, parting) : shares
}

/** The share of a cell's two ribs that is not bare. */
function hairShare(cell: number, layers: number, ribs: readonly Rib[]): number {
  const [station, layer] = [Math.floor(cell / (layers - 1)), cell % (layers - 1)]
  const bare = (gaps: readonly Gap[] | null) =>
    (gaps ?? []).reduce(
      (sum, { from, to }) => sum + Math.max(0, Math.min(to, layer + 1) - Math.max(from, layer)),
      0,
    )
  return 1 - (bare(ribs[station].gaps) + bare(ribs[station + 1].gaps)) / 2
}

/** A line that turns less than this toward its band, radians, cannot come round to meet it: a little under half a turn. */
const mostTurn = 2.6

/**
 * Whether a band can lie over itself: a cell is folded over, or the parting turns toward the band by half a turn. The
 * turn is what the far edge is shorter than the near one, over the depth.
 */
function isOverItself({ areasCm2, points, stations, layers, depthMm }: BandShape): boolean {
  if (areasCm2.some((area) => area < 0)) return true
  let turn = 0
  for (let station = 0; station + 1 < stations; station++) {
    const near = 3 * station * layers
    const far = near + 3 * (layers - 1)
    const shorter = stepMm(points, near, layers) - stepMm(points, far, layers)
    const depth = (depthMm[station] + depthMm[station + 1]) / 2
    if (shorter > 0 && depth > 0) turn += Math.min(shorter / depth, 0.5)
  }
  return turn > mostTurn
}

function stepMm(points: Float64Array, i: number, layers: number): number {
  const j = i + 3 * layers
  const [x, y, z] = [points[j] - points[i], points[j + 1] - points[i + 1], points[j + 2] - points[i + 2]]
  return Math.sqrt(x * x + y * y + z * z)
}

/** A place is its rib's own when no other part of the parting is nearer than the rib's foot, but for this, mm. */
const slackMm = 0.02
/** Looks across a cell that is its ribs' own in part, each way. */
const looks = 6

const splinePieces = 16

type IsOwn = (place: Vec3, foot: Vec3) => boolean

function nearestOnly(shape: BandShape, shares: Float64Array, { surface }: Head, parting: SurfacePath) {
  const line = measurePath(surface, smoothLine(parting, splinePieces))
  const nearest = nearestOnPath(surface, line)
  const isOwn: IsOwn = (place, foot) => {
    const away = Math.hypot(place[0] - foot[0], place[1] - foot[1], place[2] - foot[2])
    const { alongMm, chordMm } = nearest(place)
    const isPastEnd = alongMm < slackMm || alongMm > line.lengthMm - slackMm
    return isPastEnd || chordMm > away * 0.998 - slackMm
  }
  const at = (i: number): Vec3 => [shape.points[3 * i], shape.points[3 * i + 1], shape.points[3 * i + 2]]
  const owned = Array.from({ length: shape.stations * shape.layers }, (_, i) =>
    isOwn(at(i), at(i - (i % shape.layers))),
  )
  return shares.map((share, cell) => {
    const corner = cornerOf(cell, shape.layers)
    if (shape.areasCm2[cell] <= 0 || share === 0) return 0
    const corners = [corner, corner + 1, corner + shape.layers, corner + shape.layers + 1]
    const own = corners.filter((i) => owned[i]).length
    if (own === 4) return share
    const foot = corner - (corner % shape.layers)
    return share * ownShare(corners.map(at), [at(foot), at(foot + shape.layers)], isOwn)
  })
}

function ownShare([a, b, c, d]: readonly Vec3[], [footA, footC]: readonly Vec3[], isOwn: IsOwn): number {
  let own = 0
  for (let i = 0; i < looks; i++)
    for (let j = 0; j < looks; j++) {
      const [along, across] = [(i + 0.5) / looks, (j + 0.5) / looks]
      const place = lerp(lerp(a, b, across), lerp(c, d, across), along)
      if (isOwn(place, lerp(footA, footC, along))) own++
    }
  return own / looks ** 2
}
