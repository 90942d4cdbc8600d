import type { Head } from "../scalp/head"
import type { SurfacePoint } from "../surface/frames"
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

const remembered = new WeakMap<Head, WeakMap<Band, BandSpans>>()

/** The outline of a band on a head, remembered for as long as both live. */
export function bandSpans(band: Band, head: Head): BandSpans {
  const onHead = remembered.get(head) ?? new WeakMap<Band, BandSpans>()
  remembered.set(head, onHead)
  const known = onHead.get(band)
  if (known) return known
  const fresh = spansOf(outlineOf(band, head))
  onHead.set(band, fresh)
  return fresh
}

/** Whether a band covers a place of the map, radians. */
export function covers({ ring, low, high, firstLine, sides }: BandSpans, u: number, v: number): boolean {
  if (u < low[0] || u > high[0] || v < low[1] || v > high[1]) return false
  let isInside = false
  for (const side of sides[lineOf(v) - firstLine]) if (crossing(ring, side, v) > u) isInside = !isInside
  return isInside
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

function outlineOf(band: Band, head: Head): SurfacePoint[] {
  const { points, stations, layers } = bandShape(band, head)
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
  const stretches = sides.map((near, i) => crossings(ring, near, lineAt(firstLine + i)))
  return { ring, low, high, firstLine, stretches, sides }
}

function crossings(ring: readonly SurfacePoint[], sides: readonly number[], v: number): number[] {
  const found: number[] = []
  for (const side of sides) {
    const u = crossing(ring, side, v)
    if (u !== -Infinity) found.push(u)
  }
  return found.length > 2 ? found.sort((a, b) => a - b) : inOrder(found)
}

const inOrder = ([from, to]: readonly number[]) =>
  from === undefined ? [] : from < to ? [from, to] : [to, from]
