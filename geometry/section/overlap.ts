import type { Head } from "../scalp/head"
import { surfacePoint } from "../surface/frames"
import { areaElement } from "../surface/surfacePatch"
import { bandSpans, lineAt, lineStep } from "./bandSpans"
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
  let [mm2, element, count] = [0, 0, 0]
  eachShared(a, b, head, (line, fromU, toU) => {
    if (count++ % sharing === 0)
      element = areaElement(head.surface, surfacePoint((fromU + toU) / 2, lineAt(line)))
    mm2 += (toU - fromU) * lineStep * element
  })
  return mm2 / 100
}

/** The stretches of the map that both bands cover, line by line. */
export function sharedStretches(a: Band, b: Band, head: Head): Stretch[] {
  const found: Stretch[] = []
  eachShared(a, b, head, (line, fromU, toU) => found.push({ line, fromU, toU }))
  return found
}

type Visit = (line: number, fromU: number, toU: number) => void

function eachShared(a: Band, b: Band, head: Head, visit: Visit) {
  const [one, other] = [bandSpans(a, head), bandSpans(b, head)]
  const first = Math.max(one.firstLine, other.firstLine)
  const end = Math.min(one.firstLine + one.stretches.length, other.firstLine + other.stretches.length)
  for (let line = first; line < end; line++)
    meet(one.stretches[line - one.firstLine], other.stretches[line - other.firstLine], line, visit)
}

function meet(one: readonly number[], other: readonly number[], line: number, visit: Visit) {
  for (let i = 0; i + 1 < one.length; i += 2)
    for (let j = 0; j + 1 < other.length; j += 2) {
      const fromU = Math.max(one[i], other[j])
      const toU = Math.min(one[i + 1], other[j + 1])
      if (fromU < toU) visit(line, fromU, toU)
    }
}
