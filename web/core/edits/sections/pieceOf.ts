import { frontSide } from "../../../../geometry/scalp/frontSide"
import type { Head } from "../../../../geometry/scalp/head"
import { isFoil, type Section } from "../../../../geometry/section/section"
import { cutParting } from "../../../../geometry/surface/cutParting"
import { freeId, freeMapNumber } from "../../document/newSection"

/** A part of a section between two shares of its parting, 0 to 1, its depths taken where the whole's depth has got to. */
export function pieceOf(section: Section, { from, to }: { from: number; to: number }, head: Head): Section {
  const [before] = to < 1 ? cutParting(head.surface, section.parting, to) : [section.parting]
  const parting = from > 0 ? cutParting(head.surface, before, from / to)[1] : before
  const { start, end } = section.depthMm
  const depthAt = (share: number) => start + (end - start) * share
  return {
    ...section,
    parting,
    taken: takenOf(section, parting, head),
    depthMm: { start: depthAt(from), end: depthAt(to) },
  }
}

/** The side of a part that the whole took its hair from: the face may lie on another side of a part than of the whole. */
function takenOf({ parting, taken }: Section, part: Section["parting"], head: Head): Section["taken"] {
  if (frontSide(parting, head) === frontSide(part, head)) return taken
  return taken === "front" ? "behind" : "front"
}

/** The same section under an id and a map number that the others have not used. */
export function renewed(section: Section, sections: readonly Section[]): Section {
  const copy = { ...section, id: freeId(sections) }
  return isFoil(copy) ? { ...copy, mapNumber: freeMapNumber(sections) } : copy
}
