import type { Technique } from "../../../presets/techniques/technique"
import { type HouseTechnique, techniques } from "../../../presets/techniques/techniques"

/** A technique that can be chosen: one of the house, which may be varied, or one of the salon's own. */
export type TechniqueChoice = { technique: Technique; house: HouseTechnique | null }

/** The salon's own first: they are the ones it works by. Those of the house in the words that `tell` has for them. */
export const choicesWith = (
  own: readonly Technique[],
  tell: (house: HouseTechnique) => Technique,
): readonly TechniqueChoice[] => [
  ...own.map((technique) => ({ technique, house: null })),
  ...techniques.map((house) => ({ technique: tell(house), house })),
]

export const isHouseId = (id: string) => techniques.some((house) => house.id === id)
