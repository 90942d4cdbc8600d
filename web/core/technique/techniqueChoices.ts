import { type Technique, type TechniquePreset, techniqueOf } from "../../../presets/techniques/technique"
import { techniques } from "../../../presets/techniques/techniques"

/** A technique that can be chosen: one of the house, which may be varied, or one of the salon's own. */
export type TechniqueChoice = { technique: Technique; preset: TechniquePreset | null }

const house: readonly TechniqueChoice[] = techniques.map((preset) => ({
  technique: techniqueOf(preset),
  preset,
}))

/** The salon's own first: they are the ones it works by. */
export const choicesWith = (own: readonly Technique[]): readonly TechniqueChoice[] => [
  ...own.map((technique) => ({ technique, preset: null })),
  ...house,
]

export const isHouseId = (id: string) => house.some(({ technique }) => technique.id === id)
