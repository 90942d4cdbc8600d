import { isFoil } from "../../../geometry/section/section"
import { joiningFigures } from "../../../presets/weighing/joiningFigures"
import { lessonsOf } from "../chair/learntPace"
import { sheetOf } from "../document/salon"
import type { Plan } from "../document/schema"
import type { RecordedBowl } from "../document/serviceRecord"
import { foilKinds } from "../kinds/kindRecords"
import { testedMix } from "../lift/liftOfPlan"
import { liftConditions } from "../lift/scheduleReady"
import { needOf } from "../weighing/salonOfPlan"
import type { LearnRow } from "./learnRow"

/**
 * What a salon's plans tell: bowls that were weighed after the service, strand tests, and the pace of each pair of hands.
 * Numbers alone; whose head it was, who worked, what product and when is left behind.
 */
export function rowsOfPlans(plans: readonly Plan[]): LearnRow[] {
  const once = [...new Map(plans.map((plan) => [plan.service?.startedAt ?? plan.id, plan])).values()]
  return [...once.flatMap(bowlsOf), ...strandsOfPlans(once), ...pacesOf(plans)]
}

/** By the foils as they were drawn when the service was done. */
function bowlsOf(now: Plan): LearnRow[] {
  const plan: Plan = { ...now, ...now.service?.drawn }
  return (plan.service?.bowls ?? []).flatMap((bowl): LearnRow[] => {
    const usedG = usedOf(bowl)
    const isThere = bowl.foils.every((id) =>
      plan.sections.some((section) => isFoil(section) && section.id === id),
    )
    if (usedG === null || !isThere || bowl.foils.length === 0) return []
    const { need, kind } = needOf(bowl.foils, bowl.mix, plan)
    const { panels, hairG, strandAreaCm2 } = need
    return panels > 0 ? [{ row: "weighing", kind, foils: panels, hairG, strandAreaCm2, productG: usedG }] : []
  })
}

/** Grams that left a bowl, where it was mixed and what was left has been weighed. */
function usedOf({ lightenerG, developerG, additives = [], leftG, mixedAtMs }: RecordedBowl): number | null {
  if (leftG === null || mixedAtMs === null) return null
  const madeG = lightenerG + developerG + additives.reduce((sum, { grams }) => sum + grams, 0)
  return madeG > leftG ? madeG - leftG : null
}

/** A strand in a mix that the plan no longer has, or whose sheet prints no lift, tells nothing that can be used. */
function strandsOfPlans(plans: readonly Plan[]): LearnRow[] {
  return plans.flatMap((plan, at): LearnRow[] => {
    const test = plan.timing?.strandTest
    const mix = test && testedMix(plan, test)
    const conditions = mix && liftConditions(mix, sheetOf(mix.product, plan) ?? undefined)
    if (!test || !conditions) return []
    const { onHeadPercent, longestMin, printed } = conditions
    return test.rows.map(({ minutes, level }) => ({
      row: "strand",
      strand: at + 1,
      onHeadPercent,
      printedLowLevels: printed.low,
      printedHighLevels: printed.high,
      longestMin,
      startLevel: test.startLevel,
      minutes,
      level,
    }))
  })
}

function pacesOf(plans: readonly Plan[]): LearnRow[] {
  return lessonsOf(plans).flatMap(({ minutes }) =>
    foilKinds.flatMap((kind): LearnRow[] => {
      const timed = minutes[kind]
      if (timed.length < joiningFigures.leastFoils) return []
      const mean = timed.reduce((sum, each) => sum + each, 0) / timed.length
      const squares = timed.reduce((sum, each) => sum + (each - mean) ** 2, 0)
      const spreadMin = Math.sqrt(squares / (timed.length - 1))
      return [{ row: "pace", kind, foils: timed.length, minutes: mean, spreadMin }]
    }),
  )
}
