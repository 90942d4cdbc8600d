import type { FlatPanel } from "../../../geometry/painted/flatPanel"
import { isFoil, type Section } from "../../../geometry/section/section"
import { kindOf } from "../../../geometry/section/sectionKinds"
import type { Plan } from "../document/schema"
import { valuesOf } from "../kinds/kindRecords"
import { figuresOf } from "./measured"

/** A painted section laid flat: as wide as its parting, as long as its hair; null where nothing is painted. */
export function flatPanelOf(section: Section, plan: Plan): FlatPanel | null {
  const { painting } = valuesOf(section)
  if (!painting || !isFoil(section)) return null
  const { partingMm, lengthCm } = figuresOf(section, plan)
  return {
    widthMm: partingMm,
    lengthMm: 10 * lengthCm,
    startMm: kindOf(section).productStartMm(section),
    strand: section.strand,
    painting,
  }
}
