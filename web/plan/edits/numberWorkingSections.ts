import { type Foil, isFoil } from "../../../geometry/section/section"
import type { Edit } from "../edit"
import type { Plan } from "../schema"
import { type Side, sideOf } from "../words"
import { byWorkingSection } from "../workingSectionsBelonging"
import { replaceEach } from "./replaceSections"

/** Numbers the foils on the map 1, 2, 3 ... working section by working section, and in each side by side. */
export const numberByWorkingSection: Edit = (plan) => {
  const order = foilsBySectionAndSide(plan).map(({ id }) => id)
  return replaceEach(order, (section) => {
    const mapNumber = order.indexOf(section.id) + 1
    return isFoil(section) && section.mapNumber !== mapNumber ? { ...section, mapNumber } : section
  })(plan)
}

/** Foils in the order of their working sections; in each those of one side, then of the next, as they come in the plan. */
export const foilsBySectionAndSide = (plan: Plan): Foil[] =>
  byWorkingSection(plan).flatMap(({ sections }) => {
    const foils = sections.filter(isFoil)
    const sides = [...new Set(foils.map(sideOf))]
    return sides.flatMap((side: Side) => foils.filter((foil) => sideOf(foil) === side))
  })
