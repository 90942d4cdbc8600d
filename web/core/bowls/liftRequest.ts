import type { Foil } from "../../../geometry/section/section"
import { type HairState, hairStates, newConsultation } from "../document/consultation"
import type { Plan } from "../document/schema"
import { takesAtHairline } from "../figures/hairAtHairline"
import { headOf } from "../figures/measured"
import { darkestOf, hairOfFoil } from "../lift/foilLevels"
import { isFine } from "../lift/liftsFirst"
import type { LiftWish } from "../mixing/developer"
import { zoneOf } from "../schedule/scheduleFromPlan"

/** What is wanted of the hair of some foils: the darkest level written down for it, and all that asks for gentleness. */
export function liftRequest(foils: readonly Foil[], plan: Plan): LiftWish {
  const consultation = plan.consultation ?? newConsultation()
  const states: HairState[] =
    foils.length > 0
      ? foils.flatMap((foil) => hairOfFoil(foil, zoneOf(foil, plan), plan))
      : hairStates(consultation)
  return {
    ...levelsWished(darkestOf(states), plan),
    hairline: foils.some((foil) => takesAtHairline(foil, headOf(plan))),
    fine: isFine(plan),
    porous: states.some(({ porosity }) => porosity === "high"),
    lightened: states.some(({ history }) => history?.includes("lightened")),
  }
}

/**
 * The levels said for the clock, else the darkest written down and the one it is to be lifted to. Where either was not
 * written down it stays unknown: no strength follows from what the clock was told alone.
 */
function levelsWished(fromLevel: number | null, { timing, consultation }: Plan) {
  const liftToLevel = consultation?.liftToLevel ?? null
  const told = timing?.lift ?? null
  return told === null || fromLevel === null || liftToLevel === null
    ? { fromLevel, liftToLevel }
    : { fromLevel: told.fromLevel, liftToLevel: told.toLevel }
}
