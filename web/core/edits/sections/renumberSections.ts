import { isFoil, type Section } from "../../../../geometry/section/section"
import type { Edit } from "../../document/edit"
import { replaceEach } from "./replaceSections"

/** Numbers the foils on the map 1, 2, 3 ... in the order of application. */
export const renumberSections: Edit = (plan) => {
  const order = plan.sections.filter(isFoil).map(({ id }) => id)
  return replaceEach(order, (section) => numbered(section, order.indexOf(section.id) + 1))(plan)
}

/** Gives a foil a number on the map; the foil that had it takes the old one. */
export const setMapNumber =
  (id: string, mapNumber: number): Edit =>
  (plan) => {
    const foils = plan.sections.filter(isFoil)
    const foil = foils.find((each) => each.id === id)
    const holder = foils.find((each) => each.mapNumber === mapNumber)
    if (!foil || foil === holder) return plan
    const ids = holder ? [id, holder.id] : [id]
    return replaceEach(ids, (section) => numbered(section, section.id === id ? mapNumber : foil.mapNumber))(
      plan,
    )
  }

/** The same object when it has the number already. */
const numbered = (section: Section, mapNumber: number): Section =>
  isFoil(section) && section.mapNumber !== mapNumber ? { ...section, mapNumber } : section
