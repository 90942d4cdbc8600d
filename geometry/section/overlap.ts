import type { Head } from "../scalp/head"
import type { Surface } from "../surface/surface"
import { elementsOf } from "../surface/surfacePatch"
import { type BandSpans, bandSpans, lineStep, rowLines, rowStep } from "./bandSpans"
import type { Band } from "./section"

/** Whether two bands come near each other at all: the boxes round them meet. */
export function isNear(a: Band, b: Band, head: Head): boolean {
  const [one, other] = [bandSpans(a, head), bandSpans(b, head)]
  return one.lowU < other.highU && other.lowU < one.highU && one.lowV < other.highV && other.lowV < one.highV
}

/** Scalp of a head from which both bands take their hair, cm2. */
export const overlapCm2 = (a: Band, b: Band, head: Head) =>
  sharedCm2(bandSpans(a, head), bandSpans(b, head), head.surface)

/** Scalp that both outlines go round, cm2: lines in a row share one reading of how large the map is drawn there. */
export function sharedCm2(one: BandSpans, other: BandSpans, surface: Surface): number {
  const [mine, its] = [one.rows, other.rows]
  const end = Math.min(2 * one.firstRow + mine.length, 2 * other.firstRow + its.length)
  const elementAt = elementsOf(surface)
  let mm2 = 0
  for (let row = 2 * Math.max(one.firstRow, other.firstRow); row < end; row += 2) {
    const i = row - 2 * one.firstRow
    const j = row - 2 * other.firstRow
    if (mine[i] >= its[j + 1] || its[j] >= mine[i + 1]) continue
    const width = sharedWidth(one, other, row / 2)
    if (width === 0) continue
    const middle = (Math.max(mine[i], its[j]) + Math.min(mine[i + 1], its[j + 1])) / 2
    mm2 += width * lineStep * elementAt(middle, ((row + 1) / 2) * rowStep)
  }
  return mm2 / 100
}

/** How much of the lines of a row, added up, both outlines go round, radians. */
function sharedWidth(one: BandSpans, other: BandSpans, row: number): number {
  const first = Math.max(row * rowLines, one.firstLine, other.firstLine)
  const end = Math.min((row + 1) * rowLines, endOfShared(one, other))
  const both = one.isSingle && other.isSingle ? singleWidth : anyWidth
  return both(one, other, first, end)
}

function singleWidth(one: BandSpans, other: BandSpans, first: number, end: number): number {
  const [mine, its] = [one.stretches, other.stretches]
  const last = 2 * (end - one.firstLine)
  let width = 0
  for (let i = 2 * (first - one.firstLine), j = 2 * (first - other.firstLine); i < last; i += 2, j += 2) {
    const from = Math.max(mine[i], its[j])
    const to = Math.min(mine[i + 1], its[j + 1])
    if (from < to) width += to - from
  }
  return width
}

function anyWidth(one: BandSpans, other: BandSpans, first: number, end: number): number {
  const [mine, its] = [one.stretches, other.stretches]
  let width = 0
  for (let line = first; line < end; line++) {
    const [begin, stop] = [other.starts[line - other.firstLine], other.starts[line - other.firstLine + 1]]
    for (let i = one.starts[line - one.firstLine]; i < one.starts[line - one.firstLine + 1]; i += 2)
      for (let j = begin; j < stop; j += 2)
        width += Math.max(0, Math.min(mine[i + 1], its[j + 1]) - Math.max(mine[i], its[j]))
  }
  return width
}

/** The first line that two bands do not both reach. */
export const endOfShared = (a: BandSpans, b: BandSpans) =>
  Math.min(a.firstLine + a.starts.length, b.firstLine + b.starts.length) - 1
