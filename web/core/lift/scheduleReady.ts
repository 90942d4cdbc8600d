import type { ProductSheet } from "../../../presets/formula/productSheet"
import { liftReference } from "../../../presets/timing/lift"
import { longestWithoutSheetMin } from "../../../presets/timing/pace"
import type { Mix, Refusal } from "../document/schema"
import { labelPercent, onHeadPercent } from "../mixing/strength"
import type { LiftConditions } from "./lift"
import { levelRefusal } from "./lift"

/** From which level to which, before toning. */
export type LiftGoal = { fromLevel: number; toLevel: number }

export const goalRefusal = ({ fromLevel, toLevel }: LiftGoal): Refusal | null =>
  levelRefusal("The level to start from", fromLevel) ??
  levelRefusal("The level to lift to", toLevel) ??
  (toLevel > fromLevel
    ? null
    : { refused: "The level to lift to must be lighter than the one to start from." })

/** What lift a sheet promises to a mix, or null where it prints none for that developer. */
export function liftConditions(mix: Mix, sheet: ProductSheet | undefined): LiftConditions | null {
  const printed = sheet?.developers.find(({ volume }) => volume === mix.developerVolume)?.levels
  if (!printed) return null
  return {
    onHeadPercent: onHeadPercent(labelPercent(mix.developerVolume), mix.ratio),
    temperatureC: liftReference.temperatureC,
    longestMin: sheet?.longestMin ?? longestWithoutSheetMin,
    printed,
  }
}
