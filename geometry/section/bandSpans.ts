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
  /** The corners of the outline, in order round it. */
  us: readonly number[]
  vs: readonly number[]
  /** Round each few of its sides a ring: middle u, middle v and radius by turns. */
  hoops: readonly number[]
  /** The box round it, radians. */
  low: readonly [number, number]
  high: readonly [number, number]
  firstLine: number
  /** Line by line from the first, the stretches of u that the band covers: from, to, from, to. */
  stretches: readonly number[]
  /** Where the stretches of each line begin in that row, and after the last line where they end. */
  starts: readonly number[]
}

const remembered = new WeakMap<BandShape, BandSpans>()

/** The outline of a band on a head, or of no more than so many mm of its depth, remembered for as long as its grid is. */
export function bandSpans(band: Band, head: Head, mostMm?: number): BandSpans {
  const shape = bandShape(band, head, mostMm)
  const known = remembered.get(shape)
  if (known) return known
  const fresh = spansOf(shape)
  remembered.set(shape, fresh)
  return fresh
}

/** Whether a band covers a place of the map, radians: its outline goes round it, once or more. */
export function covers({ us, vs, low, high }: BandSpans, u: number, v: number): boolean {
  if (u < low[0] || u > high[0] || v < low[1] || v > high[1]) return false
  let turns = 0
  for (let side = 0; side < us.length; side++) {
    const next = side + 1 === us.length ? 0 : side + 1
    const isUnder = vs[side] <= v
    if (isUnder === vs[next] <= v) continue
    if (crossing(us, vs, side, next, v) > u) turns += isUnder ? 1 : -1
  }
  return turns !== 0
}

/** The u at which a side of an outline crosses a line of constant v. */
const crossing = (us: readonly number[], vs: readonly number[], from: number, to: number, v: number) =>
  us[from] + ((us[to] - us[from]) * (v - vs[from])) / (vs[to] - vs[from])

/** A stretch of a line, as shares of it. */
export type Covered = { from: number; to: number }
const nowhere: readonly Covered[] = []
const everywhere: readonly Covered[] = [{ from: 0, to: 1 }]

/** The stretches of a straight line of the map that a band covers, in order. */
export function coveredAlong(spans: BandSpans, from: SurfacePoint, to: SurfacePoint): readonly Covered[] {
  const [u0, v0, u1, v1] = [from[0], from[1], to[0], to[1]]
  if (isApart(spans, u0, v0, u1, v1)) return nowhere
  if (u0 === u1 && v0 === v1) return covers(spans, u0, v0) ? everywhere : nowhere
  const met = metBy(spans, u0, v0, u1 - u0, v1 - v0)
  const stretches: Covered[] = []
  let [turns, start] = [0, 0]
  for (const { share, way } of met) {
    const before = turns
    turns += way
    if (before === 0) start = share
    else if (turns === 0 && share > 0 && start < 1)
      stretches.push({ from: Math.max(0, start), to: Math.min(1, share) })
  }
  return stretches
}

const isApart = ({ low, high }: BandSpans, u0: number, v0: number, u1: number, v1: number) =>
  (u0 < low[0] && u1 < low[0]) ||
  (u0 > high[0] && u1 > high[0]) ||
  (v0 < low[1] && v1 < low[1]) ||
  (v0 > high[1] && v1 > high[1])

type Met = { share: number; way: 1 | -1 }

/** Where the straight line from a place by du and dv, gone on for ever to either side, goes into or out of an outline, in order. */
function metBy({ us, vs, hoops }: BandSpans, u: number, v: number, du: number, dv: number): Met[] {
  const met: Met[] = []
  const square = du * du + dv * dv
  const size = Math.sqrt(square)
  for (let hoop = 0; 3 * hoop < hoops.length; hoop++) {
    const off = (hoops[3 * hoop] - u) * dv - (hoops[3 * hoop + 1] - v) * du
    if (Math.abs(off) > hoops[3 * hoop + 2] * size) continue
    const end = Math.min(us.length, (hoop + 1) * sidesEach)
    for (let side = hoop * sidesEach; side < end; side++) {
      const next = side + 1 === us.length ? 0 : side + 1
      const [fromU, fromV, toU, toV] = [us[side] - u, vs[side] - v, us[next] - u, vs[next] - v]
      const from = fromU * dv - fromV * du
      const to = toU * dv - toV * du
      if (from <= 0 === to <= 0) continue
      const t = from / (from - to)
      const share = ((fromU + t * (toU - fromU)) * du + (fromV + t * (toV - fromV)) * dv) / square
      met.push({ share, way: to > from ? 1 : -1 })
    }
  }
  return met.length > 1 ? met.sort((a, b) => a.share - b.share) : met
}

const sidesEach = 8

/** The hoops of an outline; a line that is farther from a hoop's middle than its radius meets none of its sides. */
function hoopsOf(us: readonly number[], vs: readonly number[]): number[] {
  const hoops: number[] = []
  for (let first = 0; first < us.length; first += sidesEach) {
    const last = Math.min(us.length, first + sidesEach)
    const [u, v] = [(us[first] + us[last % us.length]) / 2, (vs[first] + vs[last % us.length]) / 2]
    let square = 0
    for (let i = first; i <= last; i++) {
      const [du, dv] = [us[i % us.length] - u, vs[i % us.length] - v]
      square = Math.max(square, du * du + dv * dv)
    }
    hoops.push(u, v, Math.sqrt(square) + 1e-12)
  }
  return hoops
}

const lineOf = (v: number) => Math.floor(v / lineStep)

/** The outline of a grid, round its parting and back along its far edge. */
function outlineOf({ places, stations, layers }: BandShape) {
  const us: number[] = []
  const vs: number[] = []
  const add = (i: number) => {
    us.push(places[2 * i])
    vs.push(places[2 * i + 1])
  }
  for (let station = 0; station < stations; station++) add(station * layers)
  for (let station = stations - 1; station >= 0; station--) add(station * layers + layers - 1)
  return { us, vs }
}

function spansOf(shape: BandShape): BandSpans {
  const { us, vs } = outlineOf(shape)
  const low = [Math.min(...us), Math.min(...vs)] as const
  const high = [Math.max(...us), Math.max(...vs)] as const
  const firstLine = lineOf(low[1])
  const crossed = crossedLines(us, vs, firstLine, lineOf(high[1]) - firstLine + 1)
  const stretches: number[] = []
  const starts = [0]
  for (let line = 0; line + 1 < crossed.starts.length; line++) {
    addStretches(crossed, line, stretches)
    starts.push(stretches.length)
  }
  return { us, vs, hoops: hoopsOf(us, vs), low, high, firstLine, stretches, starts }
}

/** Where the sides of an outline cross the lines: line by line, in order of u; a way of 1 is that of a side to greater v. */
type CrossedLines = { us: number[]; ways: number[]; starts: number[] }

function crossedLines(
  us: readonly number[],
  vs: readonly number[],
  firstLine: number,
  count: number,
): CrossedLines {
  const found: { lines: number[]; us: number[]; ways: number[] } = { lines: [], us: [], ways: [] }
  const starts: number[] = new Array(count + 1).fill(0)
  for (let side = 0; side < us.length; side++) {
    const next = side + 1 === us.length ? 0 : side + 1
    const isUp = vs[side] < vs[next]
    const [under, over] = isUp ? [vs[side], vs[next]] : [vs[next], vs[side]]
    for (let line = lineOf(under); line <= lineOf(over); line++) {
      const v = lineAt(line)
      if (under > v || v >= over) continue
      found.lines.push(line - firstLine)
      found.us.push(crossing(us, vs, side, next, v))
      found.ways.push(isUp ? 1 : -1)
      starts[line - firstLine + 1]++
    }
  }
  for (let line = 0; line < count; line++) starts[line + 1] += starts[line]
  return inOrder(found, starts)
}

/** Crossings put in their lines' rooms, each where its u comes in order. */
function inOrder(found: { lines: number[]; us: number[]; ways: number[] }, starts: number[]): CrossedLines {
  const ends = starts.slice()
  const [us, ways] = [found.us.slice(), found.ways.slice()]
  for (let i = 0; i < found.us.length; i++) {
    const line = found.lines[i]
    let place = ends[line]++
    for (; place > starts[line] && us[place - 1] > found.us[i]; place--) {
      us[place] = us[place - 1]
      ways[place] = ways[place - 1]
    }
    us[place] = found.us[i]
    ways[place] = found.ways[i]
  }
  return { us, ways, starts }
}

/** The stretches of a line that the outline goes round, once or more. */
function addStretches({ us, ways, starts }: CrossedLines, line: number, stretches: number[]) {
  let turns = 0
  for (let i = starts[line]; i < starts[line + 1]; i++) {
    const before = turns
    turns += ways[i]
    if (before === 0 || turns === 0) stretches.push(us[i])
  }
}
