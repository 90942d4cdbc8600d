import type { Head } from "../scalp/head"
import type { Feel } from "./feel"
import { pointsEach, type Strands } from "./grow"
import { headDistanceTable } from "./headDistance"
import type { Lightened } from "./lightened"

/** Of the hair seen from the front near the hairline of the face, the share that is lightened, on the client's left and right. */
export type SeenShare = { left: number; right: number }

const reachMm = 200
const [width, height] = [2 * reachMm, 2 * reachMm]
const nothing = -1e9

/** Draws the head and its hair from the front in squares of a millimetre, the nearest in each, and counts hair within `roundFaceMm`. */
export function seenShare(head: Head, strands: Strands, light: Lightened, roundFaceMm: number): SeenShare {
  const depth = headFromFront(head)
  const shown = new Uint8Array(width * height)
  for (let i = 0; i < strands.count; i++) drawStrand(strands, light, i, depth, shown)
  return countSides(shown, nearFace(head, roundFaceMm))
}

const squareAt = (x: number, z: number) => (Math.floor(z) + reachMm) * width + Math.floor(x) + reachMm
const isOnPage = (x: number, z: number) => Math.abs(x) < reachMm && z >= -reachMm && z < reachMm

/** How far forward the head reaches in each square, mm; felt from the front in strides as long as it is away. */
function headFromFront({ axes }: Head): Float32Array {
  const body = headDistanceTable(axes)
  const feel: Feel = { mm: 0, x: 0, y: 0, z: 0 }
  const depth = new Float32Array(width * height).fill(nothing)
  const felt = (x: number, z: number) => {
    for (let y = 135; y > -110; y -= Math.max(1.5, 0.8 * feel.mm)) {
      body.feel(x, y, z, feel)
      if (feel.mm <= 0) return y
    }
    return nothing
  }
  for (let z = -reachMm + 1; z < 150; z += 2)
    for (let x = -109; x < 110; x += 2) {
      const y = felt(x, z)
      for (const square of [squareAt(x, z), squareAt(x - 1, z), squareAt(x, z - 1), squareAt(x - 1, z - 1)])
        depth[square] = y
    }
  return depth
}

/** Marks the squares a strand is the nearest in: 1 for hair left as it is, 2 for lightened. */
function drawStrand(
  { points, lengthsMm }: Strands,
  light: Lightened,
  strand: number,
  depth: Float32Array,
  shown: Uint8Array,
) {
  const stepMm = lengthsMm[strand] / (pointsEach - 1)
  const marks = Math.max(1, Math.ceil(stepMm / 0.8))
  for (let k = 1; k < pointsEach; k++) {
    const to = 3 * (strand * pointsEach + k)
    for (let mark = 0; mark < marks; mark++) {
      const back = 1 - (mark + 0.5) / marks
      const x = points[to] + (points[to - 3] - points[to]) * back
      const y = points[to + 1] + (points[to - 2] - points[to + 1]) * back
      const z = points[to + 2] + (points[to - 1] - points[to + 2]) * back
      if (!isOnPage(x, z)) continue
      const square = squareAt(x, z)
      if (y < depth[square]) continue
      depth[square] = y
      const runMm = (k - back) * stepMm
      shown[square] =
        light.by[strand] >= 0 && runMm >= light.fromMm[strand] && runMm <= light.toMm[strand] ? 2 : 1
    }
  }
}

/** Whether a square lies within so many mm of the hairline from sideburn to sideburn, both on the page. */
function nearFace({ hairline, surface }: Head, roundFaceMm: number): Uint8Array {
  const near = new Uint8Array(width * height)
  const { left, right } = hairline.sides
  for (let alongMm = -left.faceReachMm; alongMm <= right.faceReachMm; alongMm += 4) {
    const [x, , z] = surface.pointAt(hairline.pointAlong(alongMm))
    for (let dz = -roundFaceMm; dz <= roundFaceMm; dz++) {
      const half = Math.sqrt(roundFaceMm ** 2 - dz ** 2)
      if (!isOnPage(0, z + dz)) continue
      const from = squareAt(Math.max(-reachMm, x - half), z + dz)
      near.fill(1, from, squareAt(Math.min(reachMm - 1, x + half), z + dz) + 1)
    }
  }
  return near
}

function countSides(shown: Uint8Array, near: Uint8Array): SeenShare {
  const hair = { left: 0, right: 0 }
  const lit = { left: 0, right: 0 }
  shown.forEach((mark, square) => {
    if (mark === 0 || near[square] === 0) return
    const side = square % width < reachMm ? "left" : "right"
    hair[side] += 1
    if (mark === 2) lit[side] += 1
  })
  return { left: lit.left / Math.max(1, hair.left), right: lit.right / Math.max(1, hair.right) }
}
