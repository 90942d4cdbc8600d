import { isFoil, type Section } from "../../../geometry/section/section"
import { mirror } from "../../../geometry/surfacePath"
import type { Edit } from "../edit"
import { freeId, freeMapNumber } from "../newSection"
import { addSections } from "./addSections"

/** Adds the same sections on the other side of the head, placed after all others in the same order. */
export const mirrorSections =
  (...ids: readonly string[]): Edit =>
  (plan) => {
    const all = [...plan.sections]
    for (const section of plan.sections) if (ids.includes(section.id)) all.push(mirroredSection(section, all))
    return addSections(...all.slice(plan.sections.length))(plan)
  }

/** Points keep their order, so the depths at start and end still belong to them. */
function mirroredSection(section: Section, sections: readonly Section[]): Section {
  const copy = { ...section, id: freeId(sections), parting: mirror(section.parting) }
  return isFoil(copy) ? { ...copy, mapNumber: freeMapNumber(sections) } : copy
}
