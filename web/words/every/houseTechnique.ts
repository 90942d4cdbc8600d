import {
  type Technique,
  type TechniqueSection,
  type TechniqueValues,
  usualValues,
} from "../../../presets/techniques/technique"
import type { HouseTechnique } from "../../../presets/techniques/techniques"
import type { TechniquesWords } from "../en/techniques/techniques"

/** A technique of the house in the words of a language, as the values chosen make it. */
export function houseTechnique(
  preset: HouseTechnique,
  words: TechniquesWords,
  values: TechniqueValues = usualValues(preset),
): Technique {
  const { name, aim, notes, steps } = words.house[preset.id]
  const { sections, told } = preset.shape(values)
  return {
    id: preset.id,
    name,
    aim,
    notes,
    // The steps of a technique are told the figures of that same technique: what its id ties together.
    steps: (steps as (figures: typeof told) => readonly string[])(told),
    sections: sections.map((section) => named(section, words)),
  }
}

function named(section: TechniqueSection, { leftOut }: TechniquesWords): TechniqueSection {
  const known = Object.entries(leftOut).find(([code]) => code === section.name)
  return known ? { ...section, name: known[1] } : section
}
