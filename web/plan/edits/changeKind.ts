import { isFoil, type SectionKind } from "../../../geometry/section/section"
import type { Edit } from "../edit"
import { type NextSection, newSection, usualSection } from "../newSection"
import { accept } from "./accept"

/** Takes the same band up another way: its parting, depth and all that both kinds have stay as they are. */
export const changeKind =
  (id: string, kind: SectionKind, next: NextSection = usualSection): Edit =>
  (plan) => {
    const sections = plan.sections.map((section) => {
      if (section.id !== id || section.kind === kind) return section
      const fresh = newSection(kind, section.parting, plan, next)
      const { parting, taken, depthMm, note } = section
      const band = { id, parting, taken, depthMm, note }
      if (!isFoil(fresh) || !isFoil(section)) return { ...fresh, ...band }
      const {
        mapNumber,
        rootDistanceMm,
        strand,
        faces,
        carrier,
        elevationDeg,
        overDirectionDeg,
        foilLie,
        mix,
      } = section
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
    })
    return accept(plan, { ...plan, sections })
  }
