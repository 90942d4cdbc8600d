import { isFoil, type Section } from "../../../geometry/section/section"

/** What a section is called in a sentence: by its number on the map, or by its name when it is hair left out. */
export const sectionName = (section: Section): string =>
  isFoil(section) ? `Foil ${section.mapNumber}` : section.name || "Left-out hair"
