import { isCoatedWith, isFoil } from "../../../geometry/section/section"
import type { ProductSheet } from "../../../presets/formula/productSheet"
import { sheetOf } from "../document/salon"
import type { Mix, Plan } from "../document/schema"
import { foilCount } from "../figures/foilCount"
import type { Piece } from "../kinds/kindRecord"
import { pieceOf } from "../kinds/kindRecords"
import { remembered } from "../memory/remembered"
import type { Bowl } from "../mixing/bowls"
import { placedInTurn } from "../mixing/bowls"
import type { DeveloperChoice } from "../mixing/developer"
import { type MixPlan, type MixProblem, planMix } from "../mixing/mix"
import { mixRecipe } from "../mixing/mixRecipe"
import { servedBy } from "../schedule/scheduleInput"
import { type TimedPlan, timedPlan } from "../schedule/timedPlan"
import { developerFor } from "./developerFor"

/** One mix of a plan: who uses it, its sheet, its bowls by the clock of the visit, and what developer is proposed. */
export type MixInPlan = {
  mix: Mix
  /** Sections that use it. */
  users: number
  /** Foils that lie in them: a wide section takes several. */
  foils: number
  piece: Piece
  sheet: ProductSheet | null
  /** Null while no foil uses it. */
  made: MixPlan | null
  problems: readonly MixProblem[]
  /** Why the visit cannot be timed, and so no bowl be given its minute. */
  untimed: Extract<TimedPlan, { ok: false }>["problems"]
  proposed: DeveloperChoice | null
}

/** The mixes of a plan, worked out once for as long as the plan lives. */
export const mixesOfPlan = remembered((plan: Plan): readonly MixInPlan[] =>
  plan.mixes.map((mix) => plannedMix(mix, plan)),
)

function plannedMix(mix: Mix, plan: Plan): MixInPlan {
  const sheet = sheetOf(mix.product, plan)
  const coated = plan.sections.filter(isFoil).filter((foil) => isCoatedWith(foil, mix.id))
  const users = coated.length
  const foils = foilCount(coated, plan)
  const piece = pieceOf(coated)
  const proposed = sheet && developerFor(mix, sheet, coated, plan)
  const timed = timedPlan(plan)
  const unmade = { mix, users, foils, piece, sheet, made: null, problems: [], untimed: [], proposed }
  if (users === 0) return unmade
  if (!timed.ok) return { ...unmade, untimed: timed.problems }
  const inTurn = placedInTurn(timed.service.foils.map((foil) => ({ ...foil, placeMin: foil.placeMin.mid })))
  const planned = planMix(servedBy(inTurn, mix.id), {
    sheet: sheet ?? { name: mix.product, potLifeMin: null, price: null },
    recipe: mixRecipe(mix, sheet, plan),
    developerPrice: plan.salon?.developerPrice ?? null,
  })
  if (!planned.ok) return { ...unmade, problems: planned.problems }
  const bowls = planned.mix.bowls.map((bowl) => onTheClock(bowl, mix, timed.schedule.bowls))
  return { ...unmade, made: { ...planned.mix, bowls } }
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
