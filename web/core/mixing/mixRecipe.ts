import { bowlFigures } from "../../../presets/formula/bowlFigures"
import type { ProductSheet } from "../../../presets/formula/productSheet"
import type { Mix, Plan } from "../document/schema"
import type { Recipe } from "./mixAmounts"
import { labelPercent } from "./strength"

/** How a mix of the plan is weighed out: by its ratio, with what is stirred in, on the scale of the salon. */
export const mixRecipe = (mix: Mix, sheet: ProductSheet | null, { salon }: Pick<Plan, "salon">): Recipe => ({
  ratio: mix.ratio,
  developerPercent: labelPercent(mix.developerVolume),
  additives: (sheet?.additives ?? []).filter(({ name }) => mix.additives?.includes(name)),
  scaleStepG: salon?.scaleStepG ?? bowlFigures.scaleStepG.value,
})
