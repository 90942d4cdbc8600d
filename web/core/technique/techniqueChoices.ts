import { type Technique, type TechniqueValues, usualValues } from "../../../presets/techniques/technique"
import { type HouseTechnique, techniques } from "../../../presets/techniques/techniques"
import type { LaidFrom } from "./lessonSchema"

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

/** What a plan keeps of the technique it is laid from: one of the house as it was varied, else its words. */
export function laidFrom({ technique, house }: TechniqueChoice, values?: TechniqueValues | null): LaidFrom {
  if (house) return { house: house.id, values: values ?? usualValues(house) }
  const { name, aim, notes, steps } = technique
  return { name, aim, notes, steps }
}

export const isHouseId = (id: string) => techniques.some((house) => house.id === id)
