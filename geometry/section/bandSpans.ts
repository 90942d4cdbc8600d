import type { Head } from "../scalp/head"
import type { BandShape } from "./bandGrid"
import { bandShape } from "./bandShape"
import type { Band } from "./section"

/** How far apart the lines of constant v lie along which bands are compared, radians of the scalp map: a third of a millimetre. */
export const lineStep = 0.0035
export const lineAt = (line: number) => (line + 0.5) * lineStep

/** A band's outline in the scalp map, ready to be asked what it covers. */
export type BandSpans = {
  /** The corners of the outline, in order round it. */
  us: Float64Array
  vs: Float64Array
  /** 1 for those at the four ends of the parting and of the far edge. */
  isEnd: Uint8Array
  /** Round each few of its sides a box: least and greatest u, least and greatest v, by turns. */
  boxes: Float64Array
  /** The box round it, radians. */
  lowU: number
  highU: number
  lowV: number
  highV: number
  firstLine: number
  /** Line by line from the first, the stretches of u that the band covers: from, to, from, to. One from plus to minus infinity where it covers nothing. */
  stretches: Float64Array
  /** Where the stretches of each line begin in that row, and after the last line where they end. */
  starts: Int32Array
  /** Whether each line has one stretch. */
  isSingle: boolean
  /** Of every few lines, row by row from the first, the least and the greatest u of their stretches by turns. */
  firstRow: number
  rows: Float64Array
}

/** So many lines make a row. */
export const rowLines = 8
export const rowStep = rowLines * lineStep

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

/** So many sides have one box round them. */
export const sidesEach = 6

function boxesRound(us: Float64Array, vs: Float64Array): Float64Array {
  const boxes = new Float64Array(4 * Math.ceil(us.length / sidesEach))
  for (let first = 0, box = 0; first < us.length; first += sidesEach, box += 4) {
    let [lowU, highU, lowV, highV] = [us[first], us[first], vs[first], vs[first]]
    for (let i = first + 1; i <= Math.min(us.length, first + sidesEach); i++) {
      const corner = i === us.length ? 0 : i
      if (us[corner] < lowU) lowU = us[corner]
      if (us[corner] > highU) highU = us[corner]
      if (vs[corner] < lowV) lowV = vs[corner]
      if (vs[corner] > highV) highV = vs[corner]
    }
    boxes[box] = lowU
    boxes[box + 1] = highU
    boxes[box + 2] = lowV
    boxes[box + 3] = highV
  }
  return boxes
}

/** The u at which a side of an outline crosses a line of constant v. */
export const crossing = (us: Float64Array, vs: Float64Array, from: number, to: number, v: number) =>
  us[from] + ((us[to] - us[from]) * (v - vs[from])) / (vs[to] - vs[from])

const lineOf = (v: number) => Math.floor(v / lineStep)

/** The outline of a grid: along the parting, across its end, back along the far edge and across its start. */
function outlineOf({ places, stations, layers }: BandShape): Pick<BandSpans, "us" | "vs" | "isEnd"> {
  const [lastStation, lastLayer] = [stations - 1, layers - 1]
  const count = 2 * (lastStation + lastLayer)
  const [us, vs, isEnd] = [new Float64Array(count), new Float64Array(count), new Uint8Array(count)]
  let i = 0
  const add = (station: number, layer: number) => {
    const from = 2 * (station * layers + layer)
    us[i] = places[from]
    vs[i] = places[from + 1]
    isEnd[i++] = station % lastStation === 0 && layer % lastLayer === 0 ? 1 : 0
  }
  for (let station = 0; station < lastStation; station++) add(station, 0)
  for (let layer = 0; layer < lastLayer; layer++) add(lastStation, layer)
  for (let station = lastStation; station > 0; station--) add(station, lastLayer)
  for (let layer = lastLayer; layer > 0; layer--) add(0, layer)
  return { us, vs, isEnd }
}

function spansOf(shape: BandShape): BandSpans {
  const outline = outlineOf(shape)
  const { us, vs } = outline
  const boxes = boxesRound(us, vs)
  const round = boxRound(boxes)
  const firstLine = lineOf(round.lowV)
  const crossed = crossedLines(us, vs, firstLine, lineOf(round.highV) - firstLine + 1)
  const lines = stretchesOf(crossed)
  return { ...outline, boxes, ...round, firstLine, ...lines, ...rowsOf(lines, firstLine) }
}

function rowsOf({ stretches, starts }: Lines, firstLine: number): Pick<BandSpans, "firstRow" | "rows"> {
  const rowOf = (line: number) => Math.floor((firstLine + line) / rowLines)
  const [firstRow, lines] = [rowOf(0), starts.length - 1]
  const rows = new Float64Array(2 * (rowOf(lines - 1) - firstRow + 1))
  for (let i = 0; i < rows.length; i += 2) {
    rows[i] = Number.POSITIVE_INFINITY
    rows[i + 1] = Number.NEGATIVE_INFINITY
  }
  for (let line = 0; line < lines; line++) {
    const row = 2 * (rowOf(line) - firstRow)
    rows[row] = Math.min(rows[row], stretches[starts[line]])
    rows[row + 1] = Math.max(rows[row + 1], stretches[starts[line + 1] - 1])
  }
  return { firstRow, rows }
}

/** The box round some boxes. */
function boxRound(boxes: Float64Array): Pick<BandSpans, "lowU" | "highU" | "lowV" | "highV"> {
  let [lowU, highU, lowV, highV] = boxes
  for (let box = 4; box < boxes.length; box += 4) {
    lowU = Math.min(lowU, boxes[box])
    highU = Math.max(highU, boxes[box + 1])
    lowV = Math.min(lowV, boxes[box + 2])
    highV = Math.max(highV, boxes[box + 3])
  }
  return { lowU, highU, lowV, highV }
}

/** Where the sides of an outline cross the lines: line by line, in order of u; a way of 1 is that of a side to greater v. */
type CrossedLines = { us: Float64Array; ways: Int8Array; starts: Int32Array }

function crossedLines(us: Float64Array, vs: Float64Array, firstLine: number, count: number): CrossedLines {
  const starts = new Int32Array(count + 1)
  eachCrossed(us, vs, (line) => {
    starts[line - firstLine + 1]++
  })
  for (let line = 0; line < count; line++) starts[line + 1] += starts[line]
  const ends = starts.slice()
  const crossed = { us: new Float64Array(starts[count]), ways: new Int8Array(starts[count]), starts }
  eachCrossed(us, vs, (line, side, next) => {
    const u = crossing(us, vs, side, next, lineAt(line))
    let place = ends[line - firstLine]++
    for (; place > starts[line - firstLine] && crossed.us[place - 1] > u; place--) {
      crossed.us[place] = crossed.us[place - 1]
      crossed.ways[place] = crossed.ways[place - 1]
    }
    crossed.us[place] = u
    crossed.ways[place] = vs[side] < vs[next] ? 1 : -1
  })
  return crossed
}

function eachCrossed(
  us: Float64Array,
  vs: Float64Array,
  visit: (line: number, side: number, next: number) => void,
) {
  for (let side = 0; side < us.length; side++) {
    const next = side + 1 === us.length ? 0 : side + 1
    const under = Math.min(vs[side], vs[next])
    const over = Math.max(vs[side], vs[next])
    for (let line = lineOf(under); line <= lineOf(over); line++)
      if (under <= lineAt(line) && lineAt(line) < over) visit(line, side, next)
  }
}

/** The stretches of each line that the outline goes round, once or more. */
function stretchesOf({ us, ways, starts }: CrossedLines): Lines {
  const lines = starts.length - 1
  const stretches = new Float64Array(us.length + 2 * lines)
  const ends = new Int32Array(starts.length)
  let [count, isSingle] = [0, true]
  for (let line = 0; line < lines; line++) {
    let turns = 0
    for (let i = starts[line]; i < starts[line + 1]; i++) {
      const before = turns
      turns += ways[i]
      if (before === 0 || turns === 0) stretches[count++] = us[i]
    }
    if (count === ends[line]) {
      stretches[count++] = Number.POSITIVE_INFINITY
      stretches[count++] = Number.NEGATIVE_INFINITY
    }
    ends[line + 1] = count
    isSingle &&= count === 2 * (line + 1)
  }
  return { stretches: stretches.subarray(0, count), starts: ends, isSingle }
}

type Lines = Pick<BandSpans, "stretches" | "starts" | "isSingle">
