import type { Head } from "../../../geometry/scalp/head"
import {
  type WorkingKind,
  type WorkingSide,
  workingKindOf,
  workingKinds,
} from "../../../geometry/working/workingSectionKind"
import type { DividedArea } from "../../../geometry/working/workingSections"

const kindNames: Record<WorkingKind, string> = {
  triangle: "Triangle",
  frame: "Face frame",
  front: "Front",
  top: "Top",
  side: "Side",
  crown: "Crown",
  behind: "Top and back",
  around: "Sides and back",
  back: "Back",
}
const sides = ["right", "left", "centre"] as const satisfies readonly WorkingSide[]

type Ruled = { index: number; name: string }

/** The areas of a head by their rule names, in the usual order: from the face back, right before left. */
export function byRule(areas: readonly DividedArea[], head: Head): Ruled[] {
  const told = areas.map((area, index) => ({ index, ...workingKindOf(area, head) }))
  const rank = ({ kind, side }: (typeof told)[number]) =>
    workingKinds.indexOf(kind) * sides.length + sides.indexOf(side)
  return told
    .toSorted((a, b) => rank(a) - rank(b))
    .map(({ index, kind, side }) => ({ index, name: nameOf(kind, side) }))
}

function nameOf(kind: WorkingKind, side: WorkingSide): string {
  if (side === "centre") return kindNames[kind]
  if (kind === "side") return side === "right" ? "Right side" : "Left side"
  return `${kindNames[kind]} ${side}`
}

/** Names told apart by a number where two are the same. */
export const distinctNames = (names: readonly string[]): string[] =>
  names.map((name, i) => {
    const before = names.slice(0, i).filter((other) => other === name).length
    return before > 0 ? `${name} ${before + 1}` : name
  })
