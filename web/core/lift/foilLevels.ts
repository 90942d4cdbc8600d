import type { Foil } from "../../../geometry/section/section"
import { type HairState, hairStates, strandParts, type Zone } from "../document/consultation"
import type { Plan } from "../document/schema"
import type { LiftGoal } from "./scheduleReady"

/** The hair that a foil in a zone coats, as far as it was written down there; else all that was written down. */
export function hairOfFoil(foil: Foil, zone: Zone, { consultation }: Plan): HairState[] {
  if (!consultation) return []
  const own = consultation.hair[zone]
  const coated = strandParts.flatMap((part, third) => (isCoated(foil, third) ? (own?.[part] ?? []) : []))
  return coated.length > 0 ? coated : hairStates(consultation)
}

/** The darkest level written down for some hair; null where none was. */
export function darkestOf(hair: readonly HairState[]): number | null {
  const levels = hair.flatMap(({ level }) => (level === null ? [] : [level]))
  return levels.length > 0 ? Math.min(...levels) : null
}

/**
 * From which level to which the hair of one foil is lifted: strength and minutes are both counted from it. Null where
 * either is not known; hair that is at its target or past it says so by its two levels.
 */
export function goalOfFoil(foil: Foil, zone: Zone, plan: Plan): LiftGoal | null {
  const fromLevel = darkestOf(hairOfFoil(foil, zone, plan))
  const toLevel = plan.consultation?.liftToLevel ?? null
  return fromLevel === null || toLevel === null ? null : { fromLevel, toLevel }
}

/** Whether a third of the strand, counted from the root, is coated. */
const isCoated = ({ strand }: Foil, third: number) => strand.from < (third + 1) / 3 && strand.to > third / 3
