import type { Head } from "../../../../geometry/scalp/head"
import { onOtherSide } from "../../../../geometry/scalp/onOtherSide"
import type { Section } from "../../../../geometry/section/section"
import type { SurfacePath } from "../../../../geometry/surface/surfacePath"
import { partingFault } from "../../checks/partingFault"
import { imageOf, twinOf } from "../../document/pairs"
import type { Plan } from "../../document/schema"
import { renewed } from "../sections/pieceOf"

/** On how many sides of the head something is made behind a section: behind one of a pair on both. */
export const sidesBehind = (section: Section, plan: Plan): 1 | 2 => (twinOf(section, plan) ? 2 : 1)

/**
 * The parting behind a section told on its twin's side: the image there, or what lies behind the twin itself where
 * that was fitted to its own side. Null where that side has no room.
 */
export function partingBeside(
  { parting }: Section,
  twin: Section,
  head: Head,
  behindTwin: () => SurfacePath | null,
): (behind: SurfacePath) => SurfacePath | null {
  const isImage = onOtherSide(head, parting).every(([u, v], i) => {
    const at = twin.parting[i]
    return at !== undefined && at[0] === u && at[1] === v
  })
  return (behind) => {
    const image = isImage ? onOtherSide(head, behind) : behindTwin()
    return image && partingFault(image, head) === null ? image : null
  }
}

/** A section made behind one of a pair, and its image made behind the other: a pair of their own. */
export function pairOf(row: Section, parting: SurfacePath, sections: readonly Section[]): [Section, Section] {
  const image = imageOf(row, renewed(row, [...sections, row]), parting)
  return [{ ...row, twin: image.id }, image]
}
