import { useMemo } from "react"
import { isFoil } from "../../../../geometry/section/section"
import type { Plan } from "../../../core/document/schema"
import { mixColors } from "../../../drawing/inks"
import { FoilHeads, type FoilPaint } from "../../heads/FoilHeads"
import { foilViews } from "../../heads/foilViews"

/** Where each bowl goes: the foils on small heads, in the colour of their mix. */
export function FoilsByBowl({ plan }: { plan: Plan }) {
  const views = useMemo(() => foilViews(plan), [plan])
  const colorOf = new Map(
    plan.sections
      .filter(isFoil)
      .map(({ id, mix }) => [
        id,
        mixColors[plan.mixes.findIndex((each) => each.id === mix) % mixColors.length],
      ]),
  )
  return <FoilHeads views={views} paintOf={(id) => painted(colorOf.get(id) ?? "none")} />
}

const painted = (color: string): FoilPaint => ({
  fill: color,
  fillOpacity: 0.75,
  stroke: color,
  strokeWidth: 0.8,
})
