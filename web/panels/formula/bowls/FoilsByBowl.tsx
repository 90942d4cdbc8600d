import { useMemo } from "react"
import { isFoil } from "../../../../geometry/section/section"
import type { Plan } from "../../../core/document/schema"
import { mixPlaces } from "../../../core/placement/mixPlaces"
import { mixColors } from "../../../drawing/inks"
import { FoilHeads, type FoilPaint } from "../../heads/FoilHeads"
import { foilViews } from "../../heads/foilViews"

/** Where each bowl goes: the foils on small heads, in the colours of their mixes. */
export function FoilsByBowl({ plan }: { plan: Plan }) {
  const views = useMemo(() => foilViews(plan), [plan])
  const colorsOf = new Map(
    plan.sections
      .filter(isFoil)
      .map((foil) => [foil.id, mixPlaces(foil, plan).map((place) => mixColors[place % mixColors.length])]),
  )
  return <FoilHeads views={views} paintOf={(id) => painted(colorsOf.get(id) ?? ["none"])} />
}

/** Filled in the colour of the ends, edged in that of the roots. */
const painted = (colors: readonly string[]): FoilPaint => ({
  fill: colors.at(-1) ?? "none",
  fillOpacity: 0.75,
  stroke: colors[0],
  strokeWidth: colors.length > 1 ? 1.4 : 0.8,
})
