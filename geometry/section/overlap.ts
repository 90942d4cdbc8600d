import type { Head } from "../scalp/head"
import { surfacePoint } from "../surface/frames"
import { areaElement } from "../surface/surfacePatch"
import { type BandSpans, bandSpans, lineAt, lineStep } from "./bandSpans"
import type { Band } from "./section"

/** A stretch of a line of constant v of the scalp map, radians. */
export type Stretch = { line: number; fromU: number; toU: number }

/** Whether two bands come near each other at all: the boxes round them meet. */
export function isNear(a: Band, b: Band, head: Head): boolean {
  const [one, other] = [bandSpans(a, head), bandSpans(b, head)]
  const meets = (axis: 0 | 1) => one.low[axis] < other.high[axis] && other.low[axis] < one.high[axis]
  return meets(0) && meets(1)
}

/** As many stretches share one reading of how large the map is drawn there: they lie within 3 mm. */
const sharing = 8

/** Scalp of a head from which both bands take their hair, cm2. */
export function overlapCm2(a: Band, b: Band, head: Head): number {
  const [one, other] = [bandSpans(a, head), bandSpans(b, head)]
  const end = endOfShared(one, other)
  let [mm2, element, count] = [0, 0, 0]
  for (let line = Math.max(one.firstLine, other.firstLine); line < end; line++) {
    const [mine, its] = [line - one.firstLine, line - other.firstLine]
    for (let i = one.starts[mine]; i + 1 < one.starts[mine + 1]; i += 2)
      for (let j = other.starts[its]; j + 1 < other.starts[its + 1]; j += 2) {
        const fromU = Math.max(one.stretches[i], other.stretches[j])
        const toU = Math.min(one.stretches[i + 1], other.stretches[j + 1])
        if (fromU >= toU) continue
        if (count++ % sharing === 0)
          element = areaElement(head.surface, surfacePoint((fromU + toU) / 2, lineAt(line)))
        mm2 += (toU - fromU) * lineStep * element
      }
  }
  return mm2 / 100
}

/** The stretches of the map that both bands cover, line by line. */
export function sharedStretches(a: Band, b: Band, head: Head): Stretch[] {
  const [one, other] = [bandSpans(a, head), bandSpans(b, head)]
  const found: Stretch[] = []
  for (let line = Math.max(one.firstLine, other.firstLine); line < endOfShared(one, other); line++)
    for (const [fromU, toU] of stretchesOn(one, line))
      for (const [start, end] of stretchesOn(other, line))
        if (Math.max(fromU, start) < Math.min(toU, end))
          found.push({ line, fromU: Math.max(fromU, start), toU: Math.min(toU, end) })
  return found
}

/** The first line that two bands do not both reach. */
const endOfShared = (a: BandSpans, b: BandSpans) =>
  Math.min(a.firstLine + a.starts.length, b.firstLine + b.starts.length) - 1

function stretchesOn(
  { stretches, starts, firstLine }: BandSpans,
  line: number,
): (readonly [number, number])[] {
  const found: (readonly [number, number])[] = []
  for (let i = starts[line - firstLine]; i + 1 < starts[line - firstLine + 1]; i += 2)
    found.push([stretches[i], stretches[i + 1]])
  return found
}
