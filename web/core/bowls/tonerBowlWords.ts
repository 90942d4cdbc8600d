import { labelPercent } from "../mixing/strength"
import { gramsRange } from "../text/figureText"
import { numberText } from "../text/numberText"
import type { TonerInPlan } from "./toners"

/** What to weigh for a toner mix, the toner first; null while it is not chosen or there is no hair for it. */
export function tonerBowlWords({ choice, bowl, wantedG }: TonerInPlan): string | null {
  if (!choice || !bowl) return null
  const { developerVolume } = choice
  const toner = `${numberText(bowl.lightenerG)} g ${choice.product}`
  const wanted = `for ${gramsRange(wantedG)} on the hair`
  if (developerVolume === null) return `${toner}, ${wanted}.`
  const strength = `${numberText(developerVolume)} vol (${numberText(labelPercent(developerVolume), 1)} %)`
  return `${toner} + ${numberText(bowl.developerG)} g (${numberText(bowl.developerMl)} mL) of ${strength}, ${wanted}.`
}
