import { type Hair, lengthCmAt } from "../hair/hair"
import type { TradeFigures } from "../hair/tradeFigures"
import type { Head } from "../scalp/head"
import type { SurfacePoint } from "../surface/frames"
import { normalAt } from "../surface/surface"
import { combDirection, type Worn } from "./combDirection"
import { hashRandom } from "./hashRandom"
import { headDistanceTable } from "./headDistance"
import { layStrand, type Start } from "./layStrand"
import { sampleRoots } from "./roots"
import type { StrandFigures } from "./strandFigures"

/** Points of each strand, from root to end, at even steps. */
export const pointsEach = 40

/** A head of hair as strands, mm in the head frame. */
export type Strands = {
  count: number
  hairsEach: number
  /** x, y, z of each point of each strand in turn. */
  points: Float32Array
  lengthsMm: Float32Array
  roots: SurfacePoint[]
}

export type Grown = {
  head: Head
  hair: Hair
  worn: Worn
  figures: TradeFigures
  strands: StrandFigures
  seed: number
}

/** Grows hair of its density and length from the scalp and lets it fall. */
export function growStrands({ head, hair, worn, figures, strands, seed }: Grown): Strands {
  const { at, hairsEach } = sampleRoots(head, hair, figures, { count: strands.count, seed })
  const body = headDistanceTable(head.axes)
  const comb = combDirection(head, worn, strands.combedBack)
  const points = new Float32Array(3 * pointsEach * at.length)
  const lengthsMm = new Float32Array(at.length)
  at.forEach((place, i) => {
    const root = head.surface.pointAt(place)
    const outward = normalAt(head.surface, place)
    const lengthMm = 10 * lengthCmAt(head, hair, figures, root) * (0.991 + 0.018 * hashRandom(seed + 4, i))
    lengthsMm[i] = lengthMm
    const start: Start = {
      root,
      outward,
      combed: comb(root, outward),
      lengthMm,
      lot: lockOf(place, seed),
      own: i,
    }
    layStrand(
      start,
      { head, body, figures: strands },
      points.subarray(3 * pointsEach * i, 3 * pointsEach * (i + 1)),
    )
  })
  return { count: at.length, hairsEach, points, lengthsMm, roots: at }
}

const lockRadians = 0.11

/** Strands that grow near each other stray alike: a lock has one number. */
const lockOf = ([u, v]: SurfacePoint, seed: number) =>
  seed * 65536 + Math.round(u / lockRadians + 100) * 256 + Math.round(v / lockRadians + 100)
