import type { Range } from "../../../../geometry/hair/tradeFigures"
import { isFoil } from "../../../../geometry/section/section"
import type { Plan } from "../../document/schema"
import { timedPlan } from "../../schedule/timedPlan"
import { totalsAmong } from "../measured"
import type { TotalsFigures } from "../totals"
import { type WorkingSection, workingAreaCm2 } from "../workingSections"
import { byWorkingSection } from "../workingSectionsBelonging"

/** What one working section comes to: its scalp, its foils together, and the minutes to place them (null when the clock cannot tell). */
export type WorkingTotals = {
  working: WorkingSection
  areaCm2: number
  foils: TotalsFigures
  placeMin: Range | null
}

/** The totals of every working section, in the order they are worked. */
export function workingTotals(plan: Plan): WorkingTotals[] {
  const timed = timedPlan(plan)
  const minutes = timed.ok ? new Map(timed.service.foils.map(({ id, placeMin }) => [id, placeMin])) : null
  return byWorkingSection(plan).map(({ working, sections }) => {
    const foils = sections.filter(isFoil)
    return {
      working,
      areaCm2: workingAreaCm2(working, plan),
      foils: totalsAmong(foils, plan),
      placeMin: minutes && sumRanges(foils.map(({ id }) => minutes.get(id) ?? { low: 0, mid: 0, high: 0 })),
    }
  })
}

const sumRanges = (ranges: readonly Range[]): Range => ({
  low: ranges.reduce((sum, { low }) => sum + low, 0),
  mid: ranges.reduce((sum, { mid }) => sum + mid, 0),
  high: ranges.reduce((sum, { high }) => sum + high, 0),
})
