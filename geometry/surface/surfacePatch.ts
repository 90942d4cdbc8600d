import { type SurfacePoint, surfacePoint } from "./frames"
import type { Surface } from "./surface"
import { between, mapDistance, type SurfacePath } from "./surfacePath"
import { dot } from "./vec3"

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

/** Square mm of surface for a square radian of the map: the length of the cross product of the tangents. */
export function areaElement(surface: Surface, at: SurfacePoint): number {
  const [along, across] = surface.tangentsAt(at)
  return Math.sqrt(dot(along, along) * dot(across, across) - dot(along, across) ** 2)
}
