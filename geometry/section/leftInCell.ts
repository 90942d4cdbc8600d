import { type BandSpans, sidesEach } from "./bandSpans"
import type { CellSquares } from "./cellSquares"

/** What a section covers, and the share of the hair there that it passes over. */
export type Taker = { spans: BandSpans; passed: number }

/** The numbers of each side of an outline in a cell: from s and t to s and t, and whether it starts at an end of an edge. */
const perSide = 5

/** Rows that are filled anew for each cell, and for each slab of it: to ask for new ones would take longer than to fill them. */
const sides: number[] = []
/** Of each taker with a side in the cell: where its sides end, how its outline turns round the middle, what it passes over. */
const ends: number[] = []
const turns: number[] = []
const passes: number[] = []
/** Where the cell is cut into slabs, in order. */
const cuts: number[] = []
/** Where outlines meet the middle of a slab, in order: how far across, whose, and whether it is gone into there on the way up. */
const metAt: number[] = []
const metBy: number[] = []
const metWays: number[] = []

/** The shares that are left of a cell: of its scalp what no one parted, of its hair what all passed over. */
export type CellLeft = { scalp: number; hair: number }

/** Takes a taker's part of all of a cell. */
export function takeAll(left: CellLeft, { passed }: Taker) {
  left.scalp = 0
  left.hair *= passed
}

/**
 * Puts down what some takers leave of a cell. Who has no side in it takes its part of all of it or of nothing. For the
 * others it is cut into slabs from rib to rib where an outline has a corner or leaves across the band; within a slab each
 * edge runs straight, so that the line down its middle tells what of the slab is covered. Gives which of them leaves nothing
 * of all of it, or -1.
 */
export function leftInCell(
  squares: CellSquares,
  at: number,
  near: readonly Taker[],
  count: number,
  left: CellLeft,
): number {
  let [takers, end, slabs] = [0, 0, 1]
  cuts[0] = -0.5
  for (let i = 0; i < count; i++) {
    const { spans, passed } = near[i]
    const begin = end
    end = addSides(squares, at, spans, begin)
    if (end > begin) {
      slabs = addCuts(squares, at, begin, end, slabs)
      ends[takers] = end
      turns[takers] = turnsOfLast * squares[at + 12]
      passes[takers++] = passed
    } else if (turnsOfLast !== 0) {
      takeAll(left, near[i])
      if (left.hair === 0) return i
    }
  }
  if (takers === 0) return -1
  cuts[slabs] = 0.5
  leftOfSlabs(squares[at + 10], squares[at + 11], slabs, takers, left)
  return -1
}

/** A side nearer than this to the edge of a cell, as a share of the cell, lies on it: some micrometres, as rows laid alike differ. */
const alongEdge = 1e-3

/** How the outline put down last turns round the middle of the cell: to the left more than nought, to the right less. */
let turnsOfLast = 0

/** Puts down the sides of an outline that come into a cell, and how it turns round the middle; gives where the sides end. */
function addSides(squares: CellSquares, at: number, spans: BandSpans, begin: number): number {
  const lowU = squares[at]
  const highU = squares[at + 1]
  const lowV = squares[at + 2]
  const highV = squares[at + 3]
  const v = squares[at + 5]
  const { boxes, vs } = spans
  const count = vs.length
  let end = begin
  turnsOfLast = 0
  for (let first = 0, box = 0; first < count; first += sidesEach, box += 4) {
    if (boxes[box + 2] > highV || boxes[box + 3] < lowV || boxes[box + 1] < lowU) continue
    const last = Math.min(first + sidesEach, count)
    if (boxes[box] <= highU) end = addRun(squares, at, spans, first, last, end)
    else {
      const isUnder = vs[first] <= v
      if (isUnder !== vs[last === count ? 0 : last] <= v) turnsOfLast += isUnder ? 1 : -1
    }
  }
  return end
}

/** The same of some sides in a row. */
function addRun(
  squares: CellSquares,
  at: number,
  { us, vs, isEnd }: BandSpans,
  first: number,
  last: number,
  begin: number,
): number {
  const alongU = squares[at + 6]
  const alongV = squares[at + 7]
  const acrossU = squares[at + 8]
  const acrossV = squares[at + 9]
  const halfS = 0.5 - alongEdge + Math.abs(squares[at + 10]) / 4
  const halfT = 0.5 - alongEdge + Math.abs(squares[at + 11]) / 4
  let offU = us[first] - squares[at + 4]
  let offV = vs[first] - squares[at + 5]
  let s = offU * acrossV - offV * acrossU
  let t = alongU * offV - alongV * offU
  let end = begin
  for (let side = first; side < last; side++) {
    const next = side + 1 === us.length ? 0 : side + 1
    const toU = us[next] - squares[at + 4]
    const toV = vs[next] - squares[at + 5]
    const toS = toU * acrossV - toV * acrossU
    const toT = alongU * toV - alongV * toU
    if (offV <= 0 !== toV <= 0 && offU + ((toU - offU) * offV) / (offV - toV) > 0)
      turnsOfLast += offV <= 0 ? 1 : -1
    const isPast = (s > halfS && toS > halfS) || (s < -halfS && toS < -halfS)
    if (!isPast && !(t > halfT && toT > halfT) && !(t < -halfT && toT < -halfT)) {
      sides[end] = s
      sides[end + 1] = t
      sides[end + 2] = toS
      sides[end + 3] = toT
      sides[end + 4] = isEnd[side]
      end += perSide
    }
    offU = toU
    offV = toV
    s = toS
    t = toT
  }
  return end
}

/** A share that is nothing but rounding: bands laid upon each other have the same edges. */
const rounding = 1e-9

/** A side that climbs less than this across the cell for a whole step along only bends what is left, and nothing jumps. */
const leastClimb = 0.25

/** Puts among the cuts of a cell, so many, those for some sides; gives how many they are then. */
function addCuts(squares: CellSquares, at: number, begin: number, end: number, count: number): number {
  const twistS = squares[at + 10]
  const twistT = squares[at + 11]
  let slabs = count
  for (let i = begin; i < end; i += perSide) {
    const s = sides[i]
    const t = sides[i + 1]
    const runS = sides[i + 2] - s
    const runT = sides[i + 3] - t
    if (sides[i + 4] === 1) slabs = addCut(alongOf(twistS, twistT, s, t), slabs)
    if (Math.abs(runT) <= leastClimb * Math.abs(runS)) continue
    slabs = addCut(leavesAt(twistS, twistT, i, -0.5), slabs)
    slabs = addCut(leavesAt(twistS, twistT, i, 0.5), slabs)
  }
  return slabs
}

function addCut(s: number, count: number): number {
  if (!(Math.abs(s) < 0.5 - rounding)) return count
  let i = count
  for (; cuts[i - 1] > s; i--) cuts[i] = cuts[i - 1]
  cuts[i] = s
  return count + 1
}

/** Where a side meets the near or the far edge of a cell, as a place along it; NaN where it does not. */
function leavesAt(twistS: number, twistT: number, side: number, edge: number): number {
  const s = sides[side]
  const toS = sides[side + 2]
  const slant = (edge * twistT) / (1 + edge * twistS)
  const from = sides[side + 1] - edge - slant * s
  const to = sides[side + 3] - edge - slant * toS
  if (from <= 0 === to <= 0) return Number.NaN
  return (s + ((toS - s) * from) / (from - to)) / (1 + edge * twistS)
}

const settling = 4

/** How far along a cell the line across it lies that goes through a place; NaN for one beyond the edges. */
function alongOf(twistS: number, twistT: number, s: number, t: number): number {
  let [along, across] = [s, t]
  for (let i = 0; i < settling; i++) {
    across = t / (1 + along * twistT)
    along = s / (1 + across * twistS)
  }
  return Math.abs(across) < 0.5 ? along : Number.NaN
}

function leftOfSlabs(twistS: number, twistT: number, slabs: number, takers: number, left: CellLeft) {
  let [scalp, hair, whole] = [0, 0, 0]
  for (let i = 0; i < slabs; i++) {
    const width = cuts[i + 1] - cuts[i]
    const s = (cuts[i] + cuts[i + 1]) / 2
    slab.lean = s * twistS
    slab.rise = 1 + s * twistT
    slab.opens = twistS
    whole += width * widthOf(-0.5, 0.5)
    leftOn(s, takers)
    scalp += width * slab.scalp
    hair += width * slab.hair
  }
  left.scalp *= scalp > rounding * whole ? scalp / whole : 0
  left.hair *= hair > rounding * whole ? hair / whole : 0
}

/**
 * A thin slab about a line across a cell, through (s, 0) by (lean, rise) for a whole step; its width grows along it by
 * `opens`. And what is left of it, in widths times steps.
 */
const slab = { lean: 0, rise: 1, opens: 0, scalp: 0, hair: 0 }

/** How much of the slab lies between two places across it. */
const widthOf = (from: number, to: number) => (to - from) * (slab.rise + (slab.opens * (from + to)) / 2)

/** What is left of the slab at a place along: from place to place where an outline is met, by how many are gone into and what they pass over. */
function leftOn(s: number, takers: number) {
  slab.scalp = 0
  slab.hair = 0
  let [covering, greedy, passed, met] = [0, 0, 1, 0]
  for (let taker = 0, begin = 0; taker < takers; taker++) {
    const before = met
    met = meet(s, begin, taker, met)
    begin = ends[taker]
    if (within[taker] === 0) continue
    covering++
    if (passes[taker] > 0) passed *= passes[taker]
    else if (met === before) return
    else greedy++
  }
  let from = -0.5
  for (let i = 0; i <= met; i++) {
    const to = i < met ? metAt[i] : 0.5
    if (to > from && greedy === 0) {
      const size = widthOf(from, to)
      slab.hair += size * passed
      if (covering === 0) slab.scalp += size
    }
    from = to
    if (i === met) return
    const taker = metBy[i]
    const was = within[taker]
    within[taker] += metWays[i]
    if (was !== 0 && within[taker] !== 0) continue
    const way = was === 0 ? 1 : -1
    covering += way
    if (passes[taker] === 0) greedy += way
    else passed = way > 0 ? passed * passes[taker] : passed / passes[taker]
  }
}

/** Of each taker how its outline turns round the place that the line across the slab has come to. */
const within: number[] = []

/** Puts in order where a taker's sides meet the line across the slab, and how it turns round the near end; gives how many are met by then. */
function meet(at: number, begin: number, taker: number, count: number): number {
  const { lean, rise } = slab
  let [met, turned] = [count, turns[taker]]
  for (let i = begin; i < ends[taker]; i += perSide) {
    const s = sides[i]
    const t = sides[i + 1]
    const toS = sides[i + 2]
    const toT = sides[i + 3]
    // On the way from the middle of the cell to the middle of the slab.
    if (at !== 0 && t <= 0 !== toT <= 0) {
      const crossed = s + ((toS - s) * t) / (t - toT)
      const isBetween = at > 0 ? crossed > 0 && crossed <= at : crossed > at && crossed <= 0
      if (isBetween) turned += t > toT === at > 0 ? 1 : -1
    }
    const from = (s - at) * rise - t * lean
    const to = (toS - at) * rise - toT * lean
    if (from <= 0 === to <= 0) continue
    const place = (t + ((toT - t) * from) / (from - to)) / rise
    const way = to > from ? 1 : -1
    // From the middle down to the near edge the outline is left as often as it is gone into on the way up.
    if (place > -0.5 && place <= 0) turned -= way
    if (place > -0.5 && place < 0.5) addMet(place, taker, way, met++)
  }
  within[taker] = turned
  return met
}

function addMet(place: number, taker: number, way: number, count: number) {
  let i = count
  for (; i > 0 && metAt[i - 1] > place; i--) {
    metAt[i] = metAt[i - 1]
    metBy[i] = metBy[i - 1]
    metWays[i] = metWays[i - 1]
  }
  metAt[i] = place
  metBy[i] = taker
  metWays[i] = way
}
