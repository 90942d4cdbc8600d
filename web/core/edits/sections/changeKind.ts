import {
  type Foil,
  isFoil,
  rootsOf,
  type Section,
  type SectionKind,
} from "../../../../geometry/section/section"
import { validateEdit } from "../../checks/validateEdit"
import type { Edit } from "../../document/edit"
import { newSection, usualSection } from "../../document/newSection"
import { twinOf } from "../../document/pairs"
import type { Plan } from "../../document/schema"
import type { NextSection } from "../../kinds/kindRecord"
import { traitsOf } from "../../kinds/kindRecords"

/** Takes the same band up another way, and its twin with it: its parting, depth and all that both kinds have stay as they are. */
export const changeKind =
  (id: string, kind: SectionKind, next: NextSection = usualSection): Edit =>
  (plan) => {
    const section = plan.sections.find((each) => each.id === id)
    if (!section || section.kind === kind) return plan
    const made = asKind(section, kind, plan, next)
    const sections = plan.sections.map((each) => (each === section ? made : each))
    const twin = twinOf(section, plan)
    const image = twin && asKind(twin, kind, { ...plan, sections }, next)
    return validateEdit(plan, {
      ...plan,
      sections: sections.map((each) => (each === twin && image ? image : each)),
    })
  }

/** The same band taken up another way. */
export function asKind(
  section: Section,
  kind: SectionKind,
  plan: Plan,
  next: NextSection = usualSection,
): Section {
  if (section.kind === kind) return section
  const fresh = newSection(kind, section.parting, plan, next)
  const { id, parting, taken, depthMm, note, twin } = section
  const band = { id, parting, taken, depthMm, note, twin }
  if (!isFoil(fresh) || !isFoil(section)) return { ...fresh, ...band }
  const own = [...traitsOf(section).ownTreatment, ...traitsOf(fresh).ownTreatment]
  const kept = carried.filter((field) => !own.includes(field))
  const treatment = Object.fromEntries(kept.map((field) => [field, section[field]]))
  const roots = traitsOf(fresh).takesRoots && rootsOf(section)
  return { ...fresh, ...band, ...treatment, ...(roots && { roots }) }
}

/** How a foil is treated, which stays however its hair is taken up. */
const carried = [
  "mapNumber",
  "name",
  "rootDistanceMm",
  "strand",
  "faces",
  "carrier",
  "elevationDeg",
  "overDirectionDeg",
  "foilLie",
  "mix",
] as const satisfies readonly (keyof Foil)[]
