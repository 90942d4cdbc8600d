import { type Hair, lengthCmAt } from "../hair/hair"
import type { TradeFigures } from "../hair/tradeFigures"
import type { Head } from "../scalp/head"
import type { SurfacePoint } from "../surface/frames"
import { normalAt } from "../surface/surface"
import { dot, normalize, scale, subtract, type Vec3 } from "../surface/vec3"
import { type Combing, combDirection, type Worn } from "./combDirection"
import { gatheredAt } from "./gather"
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
  const ledFrom = leading(head, worn, comb)
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
      ...ledFrom(root, outward),
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

/** How a strand is combed and where it is led: with the parting, or toward where it is gathered. */
function leading(head: Head, { front = "cheek" }: Worn, comb: Combing) {
  let own = 0
  return (root: Vec3, outward: Vec3): Pick<Start, "combed" | "gathered"> => {
    const gathered = gatheredAt(front, root, head.axes, own++)
    if (!gathered) return { combed: comb(root, outward), gathered }
    const way = subtract(gathered, root)
    return { combed: normalize(subtract(way, scale(outward, dot(way, outward)))), gathered }
  }
}

const lockRadians = 0.11

/** Strands that grow near each other stray alike: a lock has one number. */
const lockOf = ([u, v]: SurfacePoint, seed: number) =>
  seed * 65536 + Math.round(u / lockRadians + 100) * 256 + Math.round(v / lockRadians + 100)
