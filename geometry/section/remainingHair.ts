import type { Head } from "../scalp/head"
import { type SurfacePoint, surfacePoint } from "../surface/frames"
import type { BandShape } from "./bandGrid"
import { bandShape } from "./bandShape"
import { type BandSpans, bandSpans, type Covered, coveredAlong } from "./bandSpans"
import { cornerOf } from "./cellAreas"
import { pickedShape, stitchedShare } from "./pickedUp"
import type { Section } from "./section"
import { dipMm, heldShare } from "./sectionKinds"

/**
 * What is left for a section: of the scalp of each cell of its band the share that no one parted before, and of the
 * hair of each cell that its pick-ups reach into the share that no one took.
 */
export type Left = { scalp: Float64Array; hair: Float64Array }

/**
 * What the sections before it leave for a section. Where they cover its band each has taken its own share of the hair
 * that was still there, so that no hair is taken twice and a second weave finds what the first passed over.
 */
export function remainingHair(section: Section, before: readonly Section[], head: Head): Left {
  const [whole, picked] = [bandShape(section, head), pickedShape(section, head)]
  const parted = before.map((each): Taker => ({ spans: bandSpans(each, head), passed: 0 }))
  const takers = before.map((each) => takerOf(each, head))
  const scalp = leftOfCells(whole, parted)
  const isSame =
    whole === picked && takers.every(({ spans, passed }, i) => passed === 0 && spans === parted[i].spans)
  return { scalp, hair: isSame ? scalp : leftOfCells(picked, takers) }
}

/** What a section covers, and the share of the hair there that it passes over. */
type Taker = { spans: BandSpans; passed: number }

function takerOf(section: Section, head: Head): Taker {
  const { alongMm, stations } = bandShape(section, head)
  return {
    spans: bandSpans(section, head, dipMm(section)),
    passed: 1 - heldShare(section) * stitchedShare(section, alongMm[stations - 1]),
  }
}

/**
 * Of each cell the share that is left, along the line down its middle: exact across the band, and in steps along it. Who
 * left nothing of one cell is asked first about the next.
 */
function leftOfCells({ areasCm2, places, layers }: BandShape, takers: readonly Taker[]): Float64Array {
  const left = new Float64Array(areasCm2.length)
  const middle = (i: number) => {
    const [a, b] = [2 * i, 2 * (i + layers)]
    return surfacePoint((places[a] + places[b]) / 2, (places[a + 1] + places[b + 1]) / 2)
  }
  let greedy: Taker | null = null
  for (let cell = 0; cell < left.length; cell++) {
    const corner = cornerOf(cell, layers)
    const [from, to] = [middle(corner), middle(corner + 1)]
    if (greedy && isWhole(coveredAlong(greedy.spans, from, to))) continue
    const found = leftAlong(from, to, takers)
    greedy = found.greedy
    left[cell] = found.left
  }
  return left
}

/** The mean of what is left along a short line of the map, and who leaves nothing of all of it, if one does. */
function leftAlong(from: SurfacePoint, to: SurfacePoint, takers: readonly Taker[]) {
  let whole = 1
  const parts: Part[] = []
  for (const taker of takers) {
    const stretches = coveredAlong(taker.spans, from, to)
    if (stretches.length === 0) continue
    if (!isWhole(stretches)) parts.push({ stretches, passed: taker.passed })
    else if (taker.passed > 0) whole *= taker.passed
    else return { left: 0, greedy: taker }
  }
  return { left: parts.length === 0 ? whole : whole * meanOf(parts), greedy: null }
}

/** A share of a line that is nothing but rounding: bands laid upon each other have the same edges. */
const rounding = 1e-9

/** Whether a line is covered from end to end. */
const isWhole = ([first]: readonly Covered[]) =>
  first !== undefined && first.from < rounding && first.to > 1 - rounding

/** A taker's share of a line. */
type Part = { stretches: readonly Covered[]; passed: number }

/** Between two places where somebody's part begins or ends the middle says who has part in it. */
function meanOf(parts: readonly Part[]): number {
  const ends = [1]
  for (const { stretches } of parts) for (const { from, to } of stretches) ends.push(from, to)
  ends.sort((a, b) => a - b)
  let [sum, before] = [0, 0]
  for (const end of ends) {
    if (end > before) sum += (end - before) * leftAt((before + end) / 2, parts)
    before = end
  }
  return sum
}

function leftAt(share: number, parts: readonly Part[]): number {
  let left = 1
  for (const { stretches, passed } of parts)
    if (stretches.some(({ from, to }) => from <= share && share < to)) left *= passed
  return left
}
