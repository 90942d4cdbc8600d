import type { Foil } from "../../../geometry/section/section"
import { type HairState, hairStates, newConsultation, strandParts } from "../document/consultation"
import type { Plan } from "../document/schema"
import { takesAtHairline } from "../figures/hairAtHairline"
import { headOf } from "../figures/measured"
import { isFine } from "../lift/liftsFirst"
import type { LiftWish } from "../mixing/developer"
import { zoneOf } from "../schedule/scheduleFromPlan"

/** What is wanted of the hair of some foils: the darkest level written down for it, and all that asks for gentleness. */
export function liftRequest(foils: readonly Foil[], plan: Plan): LiftWish {
  const consultation = plan.consultation ?? newConsultation()
  const states = foils.length > 0 ? foils.flatMap((foil) => hairOf(foil, plan)) : hairStates(consultation)
  const levels = states.flatMap(({ level }) => (level === null ? [] : [level]))
  return {
    ...levelsWished(levels, plan),
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
function levelsWished(levels: readonly number[], { timing, consultation }: Plan) {
  const fromLevel = levels.length > 0 ? Math.min(...levels) : null
  const liftToLevel = consultation?.liftToLevel ?? null
  const told = timing?.lift ?? null
  return told === null || fromLevel === null || liftToLevel === null
    ? { fromLevel, liftToLevel }
    : { fromLevel: told.fromLevel, liftToLevel: told.toLevel }
}

/** The hair a foil coats, as far as it was written down for its zone; else all that was written down. */
function hairOf(foil: Foil, plan: Plan): HairState[] {
  const consultation = plan.consultation ?? newConsultation()
  const zone = consultation.hair[zoneOf(foil, plan)]
  const own = strandParts.flatMap((part, third) => (isCoated(foil, third) ? (zone?.[part] ?? []) : []))
  return own.length > 0 ? own : hairStates(consultation)
}

/** Whether a third of the strand, counted from the root, is coated. */
const isCoated = ({ strand }: Foil, third: number) => strand.from < (third + 1) / 3 && strand.to > third / 3
