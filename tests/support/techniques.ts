import type { HouseTechniqueId, Technique } from "../../presets/techniques/technique"
import { houseTechniques, techniques } from "../../presets/techniques/techniques"
import { houseTechnique } from "../../web/words/every/houseTechnique"
import { en } from "./words"

/** The techniques of the house as they are laid when nobody has varied them, in English. */
export const usualTechniques: readonly Technique[] = techniques.map((house) =>
  houseTechnique(house, en.techniques),
)

export const usualTechnique = (id: HouseTechniqueId): Technique =>
  houseTechnique(houseTechniques[id], en.techniques)
