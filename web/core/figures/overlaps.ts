import type { Head } from "../../../geometry/scalp/head"
import { bandShape } from "../../../geometry/section/bandShape"
import { type BandSpans, bandSpans, rowStep } from "../../../geometry/section/bandSpans"
import { bandAreaCm2 } from "../../../geometry/section/cellAreas"
import { sharedCm2 } from "../../../geometry/section/overlap"
import { type Band, isFoil, type Section } from "../../../geometry/section/section"
import { isSameList, rememberedLast } from "../memory/remembered"

/** Two sections that take the same hair. The one that goes on first has it; the later one is the one to change. */
export type Overlap = { earlier: Section; later: Section; areaCm2: number }

/** Told is what comes to more than the width of a comb's tooth along an edge, cm2, or to this share of the later section. */
export const leastOverlapCm2 = 0.1
const toldShare = 0.03
/** Two bands laid edge to edge share as much for the roundings of their outlines, cm2. */
const roundingCm2 = 1e-3

/** Every pair of sections that take the same hair, in order of application, however little. Hair left out twice is only left out. */
export function sharedHair(sections: readonly Section[], head: Head): Overlap[] {
  const spans = sections.map((section) => bandSpans(section, head))
  return nearBefore(sections, spans).flatMap((before, place) => {
    const earlier = before.map((each) => sections[each])
    const sharedWith = (i: number) => sharedCm2(spans[before[i]], spans[place], head.surface)
    return comparedWith(sections[place], { head, earlier, sharedWith }).filter(
      ({ areaCm2 }) => areaCm2 >= roundingCm2,
    )
  })
}

/** Shared hair of a section is told from here on, cm2. */
export const leastToldCm2 = (later: Band, head: Head) =>
  Math.max(roundingCm2, Math.min(leastOverlapCm2, toldShare * bandAreaCm2(bandShape(later, head))))

/** Those of the pairs that are worth telling; what is not told is taken out of every total all the same. */
export function toldOverlaps(shared: readonly Overlap[], head: Head): Overlap[] {
  const least = new Map<Section, number>()
  return shared.filter(({ later, areaCm2 }) => {
    const known = least.get(later) ?? leastToldCm2(later, head)
    least.set(later, known)
    return areaCm2 >= known
  })
}

/** Every pair of sections whose shared hair is worth telling. */
export const overlapsIn = (sections: readonly Section[], head: Head): Overlap[] =>
  toldOverlaps(sharedHair(sections, head), head)

/** Of each section that comes too late for some of its hair, those that have it. */
export function takersBefore(overlaps: readonly Overlap[]): Map<Section, Section[]> {
  const before = new Map<Section, Section[]>()
  for (const { earlier, later } of overlaps) {
    const takers = before.get(later)
    if (takers) takers.push(earlier)
    else before.set(later, [earlier])
  }
  return before
}

/** Rows of a band's lines to a square of the map in which bands are looked for: about five millimetres. */
const squareRows = 2
const squareStep = squareRows * rowStep

/** For each section the places of those before it that come into a square of the map with it, in order. */
function nearBefore(sections: readonly Section[], spans: readonly BandSpans[]): number[][] {
  const inSquares = new Map<number, number[]>()
  const foundBy = new Int32Array(sections.length).fill(-1)
  return sections.map((section, place) => {
    const before: number[] = []
    for (const square of squaresOf(spans[place])) {
      const others = inSquares.get(square)
      for (const other of others ?? []) {
        if (foundBy[other] === place || !(isFoil(section) || isFoil(sections[other]))) continue
        foundBy[other] = place
        before.push(other)
      }
      if (others) others.push(place)
      else inSquares.set(square, [place])
    }
    return before.sort((a, b) => a - b)
  })
}

/** The squares of the map that a band comes into, each as one number. */
function squaresOf({ firstRow, rows }: BandSpans): number[] {
  const squares: number[] = []
  const lastRow = firstRow + rows.length / 2 - 1
  for (let row = Math.floor(firstRow / squareRows); row * squareRows <= lastRow; row++) {
    let [from, to] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
    const first = Math.max(0, row * squareRows - firstRow)
    for (let i = first; i < Math.min(rows.length / 2, (row + 1) * squareRows - firstRow); i++) {
      from = Math.min(from, rows[2 * i])
      to = Math.max(to, rows[2 * i + 1])
    }
    for (let column = Math.floor(from / squareStep); column * squareStep <= to; column++)
      squares.push(row * 1024 + column)
  }
  return squares
}

/** The sections before one, and what it shares with each of them, cm2. */
type Before = { head: Head; earlier: readonly Section[]; sharedWith: (i: number) => number }

/** A section against those before it; what was compared the last time, in the same order, is not compared again. */
const comparedWith = rememberedLast(
  (a: Before, b: Before) => a.head === b.head && isSameList(a.earlier, b.earlier),
  (later: Section, { head, earlier, sharedWith }: Before, last): readonly Overlap[] => {
    const seen = last?.on.head === head ? last.made : []
    let next = 0
    return earlier.map((each, place) => {
      let i = next
      while (i < seen.length && seen[i].earlier !== each) i++
      if (i === seen.length) return { earlier: each, later, areaCm2: sharedWith(place) }
      next = i + 1
      return seen[i]
    })
  },
)
