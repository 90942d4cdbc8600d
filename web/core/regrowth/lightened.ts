import { type Foil, isFoil } from "../../../geometry/section/section"
import { kindOf } from "../../../geometry/section/sectionKinds"
import type { Lightened, Plan } from "../document/schema"
import { addGrowth, type Growth, growthIn, growthMeasured, weeksBetween } from "./growth"

/** The foils of the last day on which hair was lightened. */
export function lastLightened({
  lightened = [],
}: Plan): { on: string; foils: readonly LightenedFoil[] } | null {
  const on = lastDay(lightened)
  if (on === undefined) return null
  const foils = lightened.filter(isOfFoil).filter((each) => each.on === on)
  return foils.length > 0 ? { on, foils } : null
}

const lastDay = (lightened: readonly Lightened[]): string | undefined => {
  let last: string | undefined
  for (const { on } of lightened) if (last === undefined || on > last) last = on
  return last
}

export type LightenedFoil = Lightened & { section: Foil }
export const isOfFoil = (lightened: Lightened): lightened is LightenedFoil => isFoil(lightened.section)

/** Where product began on a foil, mm from the scalp: behind the cushion where it was backcombed, from the part that was coated. */
export const startMm = (foil: Foil, lengthCm: number) =>
  Math.max(kindOf(foil).productStartMm(foil), 10 * lengthCm * foil.strand.from)

/**
 * How far hair has grown, by the day of the plan, since it was lightened on a day. What was measured counts from the last
 * of those days; of the time before it is reckoned.
 */
export function growthSince(plan: Plan, on: string): Growth {
  const measured = plan.regrowth
  if (!measured) return growthIn(weeksBetween(on, plan.date))
  const last = lastLightened(plan)?.on ?? on
  return addGrowth(growthMeasured(measured.measuredMm), growthIn(weeksBetween(on, last)))
}
