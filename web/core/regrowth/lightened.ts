import { type Foil, isFoil } from "../../../geometry/section/section"
import { kindOf } from "../../../geometry/section/sectionKinds"
import { foilRecords } from "../chair/chairRecord"
import { chairOfRecord, planAsDone } from "../chair/liveService"
import type { Lightened, Plan } from "../document/schema"
import { counts } from "../fields/limits"
import { foilsDone } from "../record/doneToday"
import { dayIn } from "../text/zonedTime"
import { addGrowth, type Growth, growthIn, growthMeasured, weeksBetween } from "./growth"

/** What was lightened up to and with the last service of a plan, on the days that the clock of `zone` showed. */
export function lightenedAfter(plan: Plan, zone: string): readonly Lightened[] {
  const { service, lightened = [] } = plan
  if (!service) return lightened
  const records = foilRecords(chairOfRecord(service))
  const on = dayIn(zone, Date.parse(service.startedAt))
  const now = foilsDone(planAsDone(plan) ?? plan).map((section): Lightened => {
    const looks = records.get(section.id)?.looks ?? []
    return { on, level: looks.findLast(({ seen }) => seen.level !== null)?.seen.level ?? null, section }
  })
  return [...lightened, ...now].slice(-counts.lightened.high)
}

/** The foils of the last day on which hair was lightened. */
export function lastLightened({
  lightened = [],
}: Plan): { on: string; foils: readonly LightenedFoil[] } | null {
  const on = lightened
    .map((each) => each.on)
    .sort()
    .at(-1)
  if (on === undefined) return null
  const foils = lightened.filter(isOfFoil).filter((each) => each.on === on)
  return foils.length > 0 ? { on, foils } : null
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
  const last = lastLightened(plan)?.on ?? on
  const measured = plan.regrowth
  if (!measured) return growthIn(weeksBetween(on, plan.date))
  return addGrowth(growthMeasured(measured.measuredMm), growthIn(weeksBetween(on, last)))
}
