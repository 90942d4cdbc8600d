import type { Head } from "../../../geometry/scalp/head"
import { bandShape } from "../../../geometry/section/bandShape"
import { bandSpans } from "../../../geometry/section/bandSpans"
import { bandAreaCm2 } from "../../../geometry/section/cellAreas"
import { overlapCm2 } from "../../../geometry/section/overlap"
import { type Band, isFoil, type Section } from "../../../geometry/section/section"

/** Two sections that take the same hair. The one that goes on first has it; the later one is the one to change. */
export type Overlap = { earlier: Section; later: Section; areaCm2: number }

/** Told is what comes to more than the width of a comb's tooth along an edge, cm2, or to this share of the later section. */
export const leastOverlapCm2 = 0.1
const toldShare = 0.03
/** Two bands laid edge to edge share as much for the roundings of their outlines, cm2. */
const roundingCm2 = 1e-3

/** Every pair of sections that take the same hair, in order of application, however little. Hair left out twice is only left out. */
export const sharedHair = (sections: readonly Section[], head: Head): Overlap[] =>
  nearBefore(sections, head).flatMap((before, place) =>
    comparedWith(sections[place], before, head).filter(({ areaCm2 }) => areaCm2 >= roundingCm2),
  )

/** Shared hair of a section is told from here on, cm2. */
export const leastToldCm2 = (later: Band, head: Head) =>
  Math.max(roundingCm2, Math.min(leastOverlapCm2, toldShare * bandAreaCm2(bandShape(later, head))))

/** Those of the pairs that are worth telling; what is not told is taken out of every total all the same. */
export const toldOverlaps = (shared: readonly Overlap[], head: Head): Overlap[] =>
  shared.filter(({ later, areaCm2 }) => areaCm2 >= leastToldCm2(later, head))

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

/** For each section those before it whose boxes meet its own: a sweep over the map from left to right. */
function nearBefore(sections: readonly Section[], head: Head): Section[][] {
  const fromLeft = sections
    .map((section, place) => ({ place, isFoil: isFoil(section), ...bandSpans(section, head) }))
    .sort((a, b) => a.low[0] - b.low[0])
  const before = sections.map((): number[] => [])
  fromLeft.forEach((one, i) => {
    for (let j = i + 1; j < fromLeft.length && fromLeft[j].low[0] < one.high[0]; j++) {
      const other = fromLeft[j]
      const meets = one.low[1] < other.high[1] && other.low[1] < one.high[1]
      if (meets && (one.isFoil || other.isFoil))
        before[Math.max(one.place, other.place)].push(Math.min(one.place, other.place))
    }
  })
  return before.map((places) => places.sort((a, b) => a - b).map((place) => sections[place]))
}

const known = new WeakMap<Section, { head: Head; compared: readonly Overlap[] }>()

/** A section against some before it; what was compared the last time is not compared again. */
function comparedWith(later: Section, before: readonly Section[], head: Head): readonly Overlap[] {
  const last = known.get(later)
  const seen = last?.head === head ? last.compared : []
  const compared = before.map(
    (earlier) =>
      seen.find((overlap) => overlap.earlier === earlier) ?? {
        earlier,
        later,
        areaCm2: overlapCm2(earlier, later, head),
      },
  )
  known.set(later, { head, compared })
  return compared
}
