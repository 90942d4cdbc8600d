import type { ProductSheet } from "../../../presets/formula/productSheet"
import { levelScale, liftReference } from "../../../presets/timing/lift"
import { longestWithoutSheetMin } from "../../../presets/timing/pace"
import type { Mix } from "../document/schema"
import { labelPercent, onHeadPercent } from "../mixing/strength"
import type { LiftConditions } from "./lift"
import { isOnScale } from "./lift"

/** From which level to which, before toning. */
export type LiftGoal = { fromLevel: number; toLevel: number }

/** Why a plan cannot be lifted so. */
export type GoalRefusal =
  | { code: "from-off-scale"; level: number; darkest: number; lightest: number }
  | { code: "to-off-scale"; level: number; darkest: number; lightest: number }
  | { code: "not-lighter"; fromLevel: number; toLevel: number }

export function goalRefusal({ fromLevel, toLevel }: LiftGoal): GoalRefusal | null {
  if (!isOnScale(fromLevel)) return { code: "from-off-scale", level: fromLevel, ...levelScale }
  if (!isOnScale(toLevel)) return { code: "to-off-scale", level: toLevel, ...levelScale }
  return toLevel > fromLevel ? null : { code: "not-lighter", fromLevel, toLevel }
}

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
