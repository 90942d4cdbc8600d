import { isFoil, type Section, type SectionKind } from "../../../geometry/section/section"
import type { Edit } from "../edit"
import { freeMapNumber, type NextSection, newSection, usualSection } from "../newSection"
import { imageOf, twinOf } from "../pairs"
import type { Plan } from "../schema"
import { accept } from "./accept"

/** Takes the same band up another way, and its twin with it: its parting, depth and all that both kinds have stay as they are. */
export const changeKind =
  (id: string, kind: SectionKind, next: NextSection = usualSection): Edit =>
  (plan) => {
    const section = plan.sections.find((each) => each.id === id)
    if (!section || section.kind === kind) return plan
    const made = asKind(section, kind, plan, next)
    const twin = twinOf(section, plan)
    const after = new Map([[id, made]])
    if (twin) after.set(twin.id, numberedBeside(made, imageOf(made, twin, twin.parting), twin, plan))
    const sections = plan.sections.map((each) => after.get(each.id) ?? each)
    return accept(plan, { ...plan, sections })
  }

/** Hair left out that becomes a foil needs a number of its own, above the one its twin was given. */
const numberedBeside = (made: Section, image: Section, twin: Section, { sections }: Plan): Section =>
  isFoil(image) && !isFoil(twin) ? { ...image, mapNumber: freeMapNumber([...sections, made]) } : image

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
  const {
    mapNumber,
    name,
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
    name,
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
