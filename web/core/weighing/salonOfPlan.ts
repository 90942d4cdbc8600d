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

/** What a bowl went on: panels, hair and strand of its foils together, and their kind where it is one. */
export function needOf(ids: readonly string[], plan: Plan): { need: ProductNeed; kind: FoilKind | null } {
  const foils = plan.sections.filter(isFoil).filter(({ id }) => ids.includes(id))
  const figures = foils.map((foil) => netOf(foil, plan))
  const sum = (of: (each: (typeof figures)[number]) => number) =>
    figures.reduce((total, each) => total + of(each), 0)
  const kinds = new Set(foils.map(({ kind }) => kind))
  return {
    need: {
      // A board or an open-air panel uses up no foil but loses product like one.
      panels: sum(({ foils: used, hairG }) => (hairG > 0 ? Math.max(1, used) : 0)),
      hairG: sum(({ hairG }) => hairG),
      strandAreaCm2: sum(({ strandAreaCm2 }) => strandAreaCm2),
    },
    kind: kinds.size === 1 ? foils[0].kind : null,
  }
}
