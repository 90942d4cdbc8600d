import { isFoil } from "../../geometry/section/section"
import { facing, fixedViews, type ViewName } from "../../geometry/surface/views"
import type { Plan } from "../core/document/schema"
import { headOf } from "../core/figures/measured"
import { type Side, sideOf } from "../core/placement/places"

/** How many foils of a plan face the viewer, by the client's side; all of them where the page turns or lies flat. */
export function foilsFacing(plan: Plan, name: ViewName): Record<Side, number> {
  const counts = { left: 0, right: 0, centre: 0 }
  const { surface } = headOf(plan)
  for (const foil of plan.sections.filter(isFoil)) {
    const middle = foil.parting[foil.parting.length >> 1]
    const isFacing = name === "turned" || name === "unrolled" || facing(fixedViews[name], surface, middle) > 0
    if (isFacing) counts[sideOf(foil)] += 1
  }
  return counts
}
