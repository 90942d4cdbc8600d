import { areaText, countText, gramsRange } from "../../text/figureText"
import type { WorkingTotals } from "./workingTotals"

/** What a working section comes to in words: scalp, foils, product, and the minutes to place them. */
export function workingWords({ areaCm2, foils, placeMin }: WorkingTotals): string[] {
  if (foils.foils === 0 && foils.productG.high === 0) return [areaText(areaCm2), "no foils"]
  const minutes = placeMin ? [`${Math.round(placeMin.low)}–${Math.round(placeMin.high)} min`] : []
  return [areaText(areaCm2), countText(foils.foils, "foil"), gramsRange(foils.productG), ...minutes]
}
