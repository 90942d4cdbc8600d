import type { Foil } from "../../../geometry/section/section"
import type { ProductSheet } from "../../../presets/formula/productSheet"
import { productSheets } from "../document/salon"
import type { Mix, Plan } from "../document/schema"
import { readyWith } from "../lift/liftOfPlan"
import { chooseDeveloper, type DeveloperChoice, type Expects } from "../mixing/developer"
import { choicesOfPlan } from "../schedule/choicesOfPlan"
import { longestMin } from "../schedule/scheduleFromPlan"
import { liftRequest } from "./liftRequest"

/** What developer is proposed for some foils in a mix: what its sheet prints and the clock expects agree. */
export const developerFor = (
  mix: Mix,
  sheet: ProductSheet,
  foils: readonly Foil[],
  plan: Plan,
): DeveloperChoice => chooseDeveloper(sheet, liftRequest(foils, plan), expectedBy(mix, sheet, plan))

/** By the same lift as the clock goes by, the strand test in it. */
function expectedBy(mix: Mix, sheet: ProductSheet, plan: Plan): Expects {
  const { strandTest } = choicesOfPlan(plan)
  const testedSheet = productSheets(plan).find(({ name }) => name === strandTest?.product)
  const around = { testedSheet, start: plan.salon?.start }
  return (developerVolume, liftLevels) => {
    const goal = { fromLevel: 0, toLevel: liftLevels }
    const ready = readyWith({ ...mix, developerVolume }, sheet, { goal, strandTest, ...around })
    return ready.mid <= longestMin(sheet)
  }
}
