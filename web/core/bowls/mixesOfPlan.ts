import { isFoil } from "../../../geometry/section/section"
import type { ProductSheet } from "../../../presets/formula/productSheet"
import { sheetOf } from "../document/salon"
import type { Mix, Plan } from "../document/schema"
import type { Bowl } from "../mixing/bowls"
import { placedInTurn } from "../mixing/bowls"
import { chooseDeveloper, type DeveloperChoice } from "../mixing/developer"
import { type MixPlan, planMix } from "../mixing/mix"
import { mixRecipe } from "../mixing/mixRecipe"
import { timedPlan } from "../schedule/timedPlan"
import { liftRequest } from "./liftRequest"

/** One mix of a plan: who uses it, its sheet, its bowls by the clock of the visit, and what developer is proposed. */
export type MixInPlan = {
  mix: Mix
  users: number
  sheet: ProductSheet | null
  /** Null while no foil uses it. */
  made: MixPlan | null
  problems: readonly string[]
  proposed: DeveloperChoice | null
}

const remembered = new WeakMap<Plan, readonly MixInPlan[]>()

/** The mixes of a plan, worked out once for as long as the plan lives. */
export function mixesOfPlan(plan: Plan): readonly MixInPlan[] {
  const known = remembered.get(plan) ?? plan.mixes.map((mix) => plannedMix(mix, plan))
  remembered.set(plan, known)
  return known
}

function plannedMix(mix: Mix, plan: Plan): MixInPlan {
  const sheet = sheetOf(mix.product, plan)
  const coated = plan.sections.filter(isFoil).filter((foil) => foil.mix === mix.id)
  const users = coated.length
  const proposed = sheet && chooseDeveloper(sheet, liftRequest(coated, plan))
  const timed = timedPlan(plan)
  if (users === 0) return { mix, users, sheet, made: null, problems: [], proposed }
  if (!timed.ok) return { mix, users, sheet, made: null, problems: timed.problems, proposed }
  const inTurn = placedInTurn(timed.service.foils.map((foil) => ({ ...foil, placeMin: foil.placeMin.mid })))
  const planned = planMix(
    inTurn.filter((foil) => foil.mix === mix.id),
    {
      sheet: sheet ?? { name: mix.product, potLifeMin: null, price: null },
      recipe: mixRecipe(mix, sheet, plan),
      developerPrice: plan.salon?.developerPrice ?? null,
    },
  )
  if (!planned.ok) return { mix, users, sheet, made: null, problems: planned.problems, proposed }
  const bowls = planned.mix.bowls.map((bowl) => onTheClock(bowl, mix, timed.schedule.bowls))
  return { mix, users, sheet, made: { ...planned.mix, bowls }, problems: [], proposed }
}

/** A bowl with the minute at which the visit wants it. */
function onTheClock(
  bowl: Bowl,
  mix: Mix,
  bowls: readonly { mix: string; atMin: number; foils: readonly string[] }[],
): Bowl {
  const same = bowls.find((timed) => timed.mix === mix.id && timed.foils.includes(bowl.sections[0]))
  return { ...bowl, atMin: same?.atMin ?? bowl.atMin }
}
