import {
  type Band,
  isFoil,
  type Rooted,
  type Section,
  type Treatment,
} from "../../../../geometry/section/section"
import type { Edit } from "../../document/edit"
import type { ValuesGiven } from "../../kinds/kindRecord"
import { withValues } from "../../kinds/kindRecords"
import { replaceSections } from "./replaceSections"

/** New values by what they belong to. A section takes those its kind has and passes over the rest. */
export type SectionPatch = ValuesGiven & {
  band?: Partial<Omit<Band, "id">>
  treatment?: Partial<Treatment & Rooted>
}

export const changeSection = (id: string, patch: SectionPatch): Edit => changeSections([id], patch)

export const changeSections = (ids: readonly string[], patch: SectionPatch): Edit =>
  replaceSections(ids, (section) => patched(section, patch))

/** A section with new values, of which it takes those that its kind has. */
export function patched(section: Section, { band, treatment, ...values }: SectionPatch): Section {
  return withValues(isFoil(section) ? { ...section, ...band, ...treatment } : { ...section, ...band }, values)
}
