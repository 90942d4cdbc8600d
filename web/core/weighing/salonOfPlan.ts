import type { ProductNeed } from "../../../geometry/hair/product"
import { type FoilKind, isFoil } from "../../../geometry/section/section"
import type { Salon } from "../document/salon"
import type { Plan } from "../document/schema"
import { netOf } from "../figures/measured"
import { learntOf } from "./learnt"
import type { SalonShelf } from "./salonRecord"

/** What a plan takes of the things the salon keeps. */
export const salonForPlans = ({ weighings, ...own }: SalonShelf): Salon => ({
  ...own,
  learnt: learntOf(
    weighings.filter(({ leftOut }) => !leftOut),
    own.start,
  ),
})

/** Whether a salon has nothing of its own yet. */
export const isEmptySalon = (salon: Salon) =>
  [salon.sheets, salon.bottles, salon.learnt].every(({ length }) => length === 0) &&
  salon.developerPrice === null &&
  salon.scaleStepG === undefined &&
  salon.start === undefined &&
  Object.values(salon.contact ?? {}).every((said) => said === "") &&
  Object.values(salon.prices).every((price) => price === null)

/**
 * What a bowl of a mix went on: panels, hair and strand of its foils together, and their kind where it is one. Of a foil
 * with two mixes it is the stretch of that one, and its share of the panel.
 */
export function needOf(
  ids: readonly string[],
  mix: string,
  plan: Plan,
): { need: ProductNeed; kind: FoilKind | null } {
  const foils = plan.sections.filter(isFoil).filter(({ id }) => ids.includes(id))
  const coats = foils.flatMap((foil) => {
    const { foils: used, strandAreaCm2, coats } = netOf(foil, plan)
    return coats
      .filter((coat) => coat.mix === mix)
      .map((coat) => ({
        ...coat,
        // A board or an open-air panel uses up no foil but loses product like one.
        panels: coat.hairG > 0 ? (Math.max(1, used) * coat.strandAreaCm2) / strandAreaCm2 : 0,
      }))
  })
  const sum = (of: (each: (typeof coats)[number]) => number) =>
    coats.reduce((total, each) => total + of(each), 0)
  const kinds = new Set(foils.map(({ kind }) => kind))
  return {
    need: {
      panels: sum(({ panels }) => panels),
      hairG: sum(({ hairG }) => hairG),
      strandAreaCm2: sum(({ strandAreaCm2 }) => strandAreaCm2),
    },
    kind: kinds.size === 1 ? foils[0].kind : null,
  }
}
