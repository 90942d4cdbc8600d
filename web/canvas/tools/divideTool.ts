import { freehandParting, type Parted } from "../../../geometry/parting/parting"
import type { Head } from "../../../geometry/scalp/head"
import type { SurfacePath } from "../../../geometry/surface/surfacePath"
import { hairlineDivider, straightDivider } from "../../../geometry/working/workingSectionDraw"
import { refuse } from "../../core/document/edit"
import type { Plan } from "../../core/document/schema"
import { addWorkingPartings, freeDividerId } from "../../core/edits/working/addWorkingPartings"
import { divisionOf } from "../../core/figures/workingSections"
import type { PartingWay } from "../../core/placement/tools"
import { extend, type Stroke } from "./drawTool"
import type { Tool } from "./tool"

/** Draws a dividing parting, which takes no hair; the way says how the hand's points become the line. */
export const divideTool = (way: PartingWay): Tool<Stroke> => ({
  start: ({ at }) => (at ? [at] : null),
  move: (stroke, { at }) => (at ? extend(way, stroke, at) : stroke),
  finish(stroke, { plan, head }) {
    const made = dividers[way](head, stroke, plan)
    if ("refused" in made) return refuse({ code: made.refused })
    return {
      label: { chapter: "placement", code: "draw-section-line" },
      edit: addWorkingPartings(made.parting),
      divider: freeDividerId(plan),
    }
  },
})

type Make = (head: Head, stroke: SurfacePath, plan: Plan) => Parted

const dividers: Record<PartingWay, Make> = {
  straight: (head, stroke, plan) =>
    straightDivider(
      head,
      divisionOf(plan).dividers.map(({ path }) => path),
      stroke[0],
      stroke[stroke.length - 1],
    ),
  freehand: (head, stroke) => freehandParting(head, stroke),
  hairline: (head, stroke) => alongHairline(head, stroke),
}

/** Nearer to the hairline than this, mm, there is nothing to divide off. */
const leastMm = 10

function alongHairline(head: Head, stroke: SurfacePath): Parted {
  const from = head.hairline.coordinates(stroke[0])
  const to = head.hairline.coordinates(stroke[stroke.length - 1])
  const behindMm = Math.max(leastMm, Math.round(from.behindMm))
  return hairlineDivider(head, { fromAlongMm: from.alongMm, toAlongMm: to.alongMm, behindMm })
}
