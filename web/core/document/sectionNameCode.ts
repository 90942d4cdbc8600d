import { isFoil, type Section } from "../../../geometry/section/section"
import { traitsOf } from "../kinds/kindRecords"

/** What a section is called: by its number on the map, or, where it is hair left out, by the name it was given, or none. */
export type SectionNameCode =
  | { code: "foil"; number: number }
  | { code: "panel"; number: number }
  | { code: "left-out"; name: string }

export const sectionNameOf = (section: Section): SectionNameCode =>
  isFoil(section)
    ? { code: traitsOf(section).piece, number: section.mapNumber }
    : { code: "left-out", name: section.name }
