import { isFoil } from "../../../geometry/section/section"
import type { Plan } from "../../core/document/schema"
import { headOf } from "../../core/figures/measured"
import { type PaperView, type Picture, pictureOf } from "../../drawing/headDrawing"
import { labelRing } from "../../drawing/labelRings"
import { bandRing, labelMarks } from "../../drawing/marks"
import { pathData } from "../fields/pathData"

/** The foils of a plan as one view shows them: the shape of each by its id, and the numbers round the head. */
export type FoilView = {
  name: PaperView
  picture: Picture
  shapes: readonly { id: string; path: string }[]
  labels: readonly { text: string; x: number; y: number; leader: string }[]
}

const views: readonly PaperView[] = ["front", "right", "left", "back", "top"]
const labelGapMm = 15

/** The views in which there is something to see. */
export const foilViews = (plan: Plan): FoilView[] =>
  views.map((name) => foilView(plan, name)).filter(({ shapes }) => shapes.length > 0)

export function foilView(plan: Plan, name: PaperView): FoilView {
  const head = headOf(plan)
  const picture = pictureOf(head, name)
  const { scene } = picture
  const shapes = plan.sections.filter(isFoil).flatMap((foil) => {
    const path = bandRing(foil, plan, scene)
      .map((ring) => `${pathData(ring)}Z`)
      .join("")
    return path ? [{ id: foil.id, path }] : []
  })
  const labels = labelMarks(plan, scene, labelRing(name, head.axes), labelGapMm).flatMap((mark) =>
    mark.kind === "label" && mark.leader
      ? [{ text: mark.text, x: mark.at[0], y: -mark.at[1], leader: pathData([mark.leader, mark.at]) }]
      : [],
  )
  return { name, picture, shapes, labels }
}
