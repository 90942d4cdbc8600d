import { type SurfacePoint, surfacePoint } from "./frames"
import type { Surface } from "./surface"
import { between, mapDistance, type SurfacePath } from "./surfacePath"

/** Longest step of a sum over the map, radians. */
const stepRadians = 0.06
/** Gauss's two points: exact for cubics (Abramowitz, Stegun 25.4.30). */
const gaussShares = [0.5 - Math.sqrt(1 / 12), 0.5 + Math.sqrt(1 / 12)]

/**
 * Area on the surface, cm2, of a closed outline whose sides are straight in the scalp map. By Green's theorem it is
 * the sum round the outline of the strips that reach from one line of constant u to each side.
 */
export function areaCm2(surface: Surface, outline: SurfacePath): number {
  const fromU = outline[0][0]
  let squareMm = 0
  for (let i = 0; i < outline.length; i++) {
    const [start, end] = [outline[i], outline[(i + 1) % outline.length]]
    squareMm += sumSide(start, end, (at) => stripWidth(surface, fromU, at))
  }
  return Math.abs(squareMm) / 100
}

/** Whether a place lies inside a closed outline, in the scalp map. */
export function contains(outline: SurfacePath, [u, v]: SurfacePoint): boolean {
  let inside = false
  for (let i = 0, j = outline.length - 1; i < outline.length; j = i++) {
    const [[u0, v0], [u1, v1]] = [outline[i], outline[j]]
    if (v0 <= v !== v1 <= v && u0 + ((u1 - u0) * (v - v0)) / (v1 - v0) > u) inside = !inside
  }
  return inside
}

/** The integral over dv along one side. */
function sumSide(start: SurfacePoint, end: SurfacePoint, value: (at: SurfacePoint) => number): number {
  const pieces = Math.ceil(mapDistance(start, end) / stepRadians)
  let sum = 0
  for (let piece = 0; piece < pieces; piece++)
    for (const share of gaussShares) sum += value(between(start, end, (piece + share) / pieces))
  return pieces === 0 ? 0 : (sum * (end[1] - start[1])) / (2 * pieces)
}

/** The integral over du of the area element from a line of constant u to a place, mm2 a radian. */
function stripWidth(surface: Surface, fromU: number, [toU, v]: SurfacePoint): number {
  const pieces = Math.ceil(Math.abs(toU - fromU) / stepRadians)
  const width = (toU - fromU) / pieces
  let sum = 0
  for (let piece = 0; piece < pieces; piece++)
    for (const share of gaussShares)
      sum += areaElement(surface, surfacePoint(fromU + (piece + share) * width, v))
  return pieces === 0 ? 0 : (sum * width) / 2
}

const frame = new Float64Array(9)

/** Square mm of surface for a square radian of the map: the length of the cross product of the tangents. */
export function areaElement(surface: Surface, at: SurfacePoint): number {
  surface.frameAt(at[0], at[1], frame)
  const x = frame[4] * frame[8] - frame[5] * frame[7]
  const y = frame[5] * frame[6] - frame[3] * frame[8]
  const z = frame[3] * frame[7] - frame[4] * frame[6]
  return Math.sqrt(x * x + y * y + z * z)
}

/** Readings of how large the map is drawn are shared by places of one square of it, radians: they lie within 2 mm of its middle. */
const squareStep = 0.03
/** As far from the pole as any scalp goes. */
const reach = 2.4
const squaresAcross = Math.ceil((2 * reach) / squareStep)
const squareOf = (place: number) =>
  Math.min(squaresAcross - 1, Math.max(0, Math.floor((place + reach) / squareStep)))
const middleOf = (square: number) => (square + 0.5) * squareStep - reach

type Elements = (u: number, v: number) => number
const remembered = new WeakMap<Surface, Elements>()

/** The area element about a place of the map, to half a per cent: read once for each square of the map. */
export function elementsOf(surface: Surface): Elements {
  const known = remembered.get(surface)
  if (known) return known
  const read = new Float32Array(squaresAcross * squaresAcross)
  const elementAt: Elements = (u, v) => {
    const [column, row] = [squareOf(u), squareOf(v)]
    const i = row * squaresAcross + column
    if (read[i] === 0) read[i] = areaElement(surface, surfacePoint(middleOf(column), middleOf(row)))
    return read[i]
  }
  remembered.set(surface, elementAt)
  return elementAt
}
