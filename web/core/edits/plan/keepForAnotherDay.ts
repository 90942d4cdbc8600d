import { isFoil } from "../../../../geometry/section/section"
import { validateEdit } from "../../checks/validateEdit"
import type { Edit } from "../../document/edit"
import type { Plan } from "../../document/schema"
import { removeSections } from "../sections/removeSections"

/** Takes foils out of today's visit, and keeps them with the plan. */
export const keepForAnotherDay =
  (...ids: readonly string[]): Edit =>
  (plan) => {
    const kept = plan.sections.filter(({ id }) => ids.includes(id))
    if (kept.length === 0) return plan
    return removeSections(...ids)({ ...plan, later: [...(plan.later ?? []), ...kept] })
  }

/** Forgets foils kept for another day: another plan has them now. */
export const letGoOf =
  (ids: readonly string[]): Edit =>
  ({ later = [], ...plan }) => {
    const left = later.filter(({ id }) => !ids.includes(id))
    return left.length === 0 ? plan : { ...plan, later: left }
  }

/** Puts everything kept for another day back at the end of today's order; a number taken meanwhile gives way. */
export const bringBack: Edit = ({ later, ...plan }) => {
  if (!later) return plan
  const taken = new Set(plan.sections.map(({ id }) => id))
  const back = later.filter(({ id }) => !taken.has(id)).map((section) => withFreeNumber(section, plan, later))
  return validateEdit(plan, { ...plan, sections: [...plan.sections, ...back] })
}

function withFreeNumber(section: Plan["sections"][number], { sections }: Plan, later: Plan["sections"]) {
  if (!isFoil(section)) return section
  const today = numbersOf(sections)
  if (!today.includes(section.mapNumber)) return section
  const clashing = later.filter(isFoil).filter(({ mapNumber }) => today.includes(mapNumber))
  const highest = Math.max(...today, ...numbersOf(later))
  return { ...section, mapNumber: highest + 1 + clashing.findIndex(({ id }) => id === section.id) }
}

const numbersOf = (sections: Plan["sections"]) => sections.filter(isFoil).map(({ mapNumber }) => mapNumber)
