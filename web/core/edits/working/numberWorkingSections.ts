import { isFoil, type Section } from "../../../../geometry/section/section"
import type { Edit } from "../../document/edit"
import type { Plan } from "../../document/schema"
import { byWorkingSection } from "../../figures/workingSectionsBelonging"
import { sideOf } from "../../placement/places"
import { replaceEach } from "../sections/replaceSections"

/** Numbers the foils on the map 1, 2, 3 ... working section by working section, and in each side by side. */
export const numberByWorkingSection: Edit = (plan) => {
  const order = bySectionAndSide(plan)
    .filter(isFoil)
    .map(({ id }) => id)
  return replaceEach(order, (section) => {
    const mapNumber = order.indexOf(section.id) + 1
    return isFoil(section) && section.mapNumber !== mapNumber ? { ...section, mapNumber } : section
  })(plan)
}

/** Puts the order of application in the same order; map numbers stay. */
export const applyByWorkingSection: Edit = (plan) => {
  const sections = bySectionAndSide(plan)
  return sections.length < plan.sections.length ? plan : { ...plan, sections }
}

/** Sections in the order of their working sections; in each those of one side, then of the next, as they come in the plan. */
const bySectionAndSide = (plan: Plan): Section[] =>
  byWorkingSection(plan).flatMap(({ sections }) => {
    const sides = [...new Set(sections.map(sideOf))]
    return sides.flatMap((side) => sections.filter((section) => sideOf(section) === side))
  })
