import type { Head } from "../../../geometry/scalp/head"
import {
  type WorkingKind,
  type WorkingSide,
  workingKindOf,
  workingKinds,
} from "../../../geometry/working/workingSectionKind"
import type { DividedArea } from "../../../geometry/working/workingSections"

const sides = ["right", "left", "centre"] as const satisfies readonly WorkingSide[]

type Ruled = { index: number; kind: WorkingKind; side: WorkingSide }

/** The areas of a head by where they lie, in the usual order: from the face back, right before left. */
export function byRule(areas: readonly DividedArea[], head: Head): Ruled[] {
  const rank = ({ kind, side }: Ruled) => workingKinds.indexOf(kind) * sides.length + sides.indexOf(side)
  return areas
    .map((area, index) => ({ index, ...workingKindOf(area, head) }))
    .toSorted((a, b) => rank(a) - rank(b))
}
