import { isFoil, type Section, type SectionKind } from "../../../geometry/section/section"
import type { Edit } from "../edit"
import { type NextSection, newSection, usualSection } from "../newSection"
import type { Plan } from "../schema"
import { accept } from "./accept"

/** Takes the same band up another way: its parting, depth and all that both kinds have stay as they are. */
export const changeKind =
  (id: string, kind: SectionKind, next: NextSection = usualSection): Edit =>
  (plan) => {
    const sections = plan.sections.map((section) =>
      section.id === id ? asKind(section, kind, plan, next) : section,
    )
    return accept(plan, { ...plan, sections })
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
  const { id, parting, taken, depthMm, note } = section
  const band = { id, parting, taken, depthMm, note }
  if (!isFoil(fresh) || !isFoil(section)) return { ...fresh, ...band }
  const { mapNumber, rootDistanceMm, strand, faces, carrier, elevationDeg, overDirectionDeg, foilLie, mix } =
    section
  const treatment = {
    mapNumber,
    rootDistanceMm,
    strand,
    faces,
    carrier,
    elevationDeg,
    overDirectionDeg,
    foilLie,
    mix,
  }
  return { ...fresh, ...band, ...treatment }
}
