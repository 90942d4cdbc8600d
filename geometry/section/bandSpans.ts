import type { Head } from "../scalp/head"
import type { SurfacePoint } from "../surface/frames"
import type { BandShape } from "./bandGrid"
import { bandShape } from "./bandShape"
import type { Band } from "./section"

/** How far apart the lines of constant v lie along which bands are compared, radians of the scalp map: a third of a millimetre. */
export const lineStep = 0.0035
export const lineAt = (line: number) => (line + 0.5) * lineStep

/** A band's outline in the scalp map, ready to be asked what it covers. */
export type BandSpans = {
  ring: readonly SurfacePoint[]
  /** The box round it, radians. */
  low: readonly [number, number]
  high: readonly [number, number]
  firstLine: number
  /** On each line from the first, the stretches of u that the band covers: from, to, from, to. */
  stretches: readonly (readonly number[])[]
  /** The sides of the outline that reach into the room between one line's neighbours. */
  sides: readonly (readonly number[])[]
}

const remembered = new WeakMap<BandShape, BandSpans>()

/** The outline of a band on a head, or of no more than so many mm of its depth, remembered for as long as its grid is. */
export function bandSpans(band: Band, head: Head, mostMm?: number): BandSpans {
  const shape = bandShape(band, head, mostMm)
  const known = remembered.get(shape)
  if (known) return known
  const fresh = spansOf(outlineOf(shape, head))
  remembered.set(shape, fresh)
  return fresh
}

/** Whether a band covers a place of the map, radians: its outline goes round it, once or more. */
export function covers({ ring, low, high, firstLine, sides }: BandSpans, u: number, v: number): boolean {
  if (u < low[0] || u > high[0] || v < low[1] || v > high[1]) return false
  let turns = 0
  for (const side of sides[lineOf(v) - firstLine]) if (crossing(ring, side, v) > u) turns += wayOf(ring, side)
  return turns !== 0
}

/** The places along a straight line of the map, as shares of it in order, where it goes into or out of the outline of a band. */
export function crossingsAlong(
  { ring, low, high, firstLine, sides }: BandSpans,
  [u0, v0]: SurfacePoint,
  [u1, v1]: SurfacePoint,
): number[] {
  const isApart =
    Math.max(u0, u1) < low[0] ||
    Math.min(u0, u1) > high[0] ||
    Math.max(v0, v1) < low[1] ||
    Math.min(v0, v1) > high[1]
  if (isApart) return []
  const last = firstLine + sides.length - 1
  const from = Math.max(firstLine, lineOf(Math.min(v0, v1)))
  const to = Math.min(last, lineOf(Math.max(v0, v1)))
  const found: number[] = []
  const asked = new Set<number>()
  for (let line = from; line <= to; line++)
    for (const side of sides[line - firstLine]) {
      if (asked.has(side)) continue
      asked.add(side)
      const [a, b] = [ring[side], ring[side + 1 === ring.length ? 0 : side + 1]]
      const share = shareMet(u0, v0, u1 - u0, v1 - v0, a, b)
      if (share >= 0) found.push(share)
    }
  return found.sort((a, b) => a - b)
}

/** The share of a line from a place, by du and dv, at which it meets a side; -1 where it does not. */
function shareMet(u: number, v: number, du: number, dv: number, a: SurfacePoint, b: SurfacePoint): number {
  const [eu, ev] = [b[0] - a[0], b[1] - a[1]]
  const turn = du * ev - dv * eu
  if (turn === 0) return -1
  const [fu, fv] = [a[0] - u, a[1] - v]
  const share = (fu * ev - fv * eu) / turn
  const along = (fu * dv - fv * du) / turn
  return share >= 0 && share <= 1 && along >= 0 && along < 1 ? share : -1
}

const lineOf = (v: number) => Math.floor(v / lineStep)

/** The u at which one side of an outline crosses a line of constant v; minus infinity where it does not. */
function crossing(ring: readonly SurfacePoint[], side: number, v: number): number {
  const from = ring[side]
  const to = ring[side + 1 === ring.length ? 0 : side + 1]
  return from[1] <= v === to[1] <= v
    ? -Infinity
    : from[0] + ((to[0] - from[0]) * (v - from[1])) / (to[1] - from[1])
}

/** 1 for a side that goes to greater v, -1 for one that goes to less. */
const wayOf = (ring: readonly SurfacePoint[], side: number) =>
  ring[side + 1 === ring.length ? 0 : side + 1][1] > ring[side][1] ? 1 : -1

function outlineOf({ points, stations, layers }: BandShape, head: Head): SurfacePoint[] {
  const at = (station: number, layer: number) => {
    const i = 3 * (station * layers + layer)
    return head.surface.toSurface([points[i], points[i + 1], points[i + 2]])
  }
  const edge = (layer: number) => Array.from({ length: stations }, (_, station) => at(station, layer))
  return [...edge(0), ...edge(layers - 1).reverse()]
}

function spansOf(ring: readonly SurfacePoint[]): BandSpans {
  const [us, vs] = [ring.map(([u]) => u), ring.map(([, v]) => v)]
  const low = [Math.min(...us), Math.min(...vs)] as const
  const high = [Math.max(...us), Math.max(...vs)] as const
  const firstLine = lineOf(low[1])
  const sides = Array.from({ length: lineOf(high[1]) - firstLine + 1 }, (): number[] => [])
  for (let side = 0; side < ring.length; side++) {
    const [from, to] = [lineOf(vs[side]), lineOf(vs[(side + 1) % ring.length])]
    for (let line = Math.min(from, to); line <= Math.max(from, to); line++) sides[line - firstLine].push(side)
  }
  const stretches = sides.map((near, i) => stretchesOn(ring, near, lineAt(firstLine + i)))
  return { ring, low, high, firstLine, stretches, sides }
}

/** The stretches of a line that the outline goes round, once or more. */
function stretchesOn(ring: readonly SurfacePoint[], sides: readonly number[], v: number): number[] {
  const met: { u: number; way: number }[] = []
  for (const side of sides) {
    const u = crossing(ring, side, v)
    if (u !== -Infinity) met.push({ u, way: wayOf(ring, side) })
  }
  if (met.length > 1) met.sort((a, b) => a.u - b.u)
  const stretches: number[] = []
  let turns = 0
  for (const { u, way } of met) {
    const before = turns
    turns += way
    if (before === 0 || turns === 0) stretches.push(u)
  }
  return stretches
}
