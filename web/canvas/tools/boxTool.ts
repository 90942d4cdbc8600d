import type { ViewPoint } from "../../../geometry/surface/frames"
import type { ViewName } from "../../../geometry/surface/views"
import type { Plan } from "../../core/document/schema"
import { bandRing, type Scene } from "../../drawing/marks"
import type { Finished, Tool } from "./tool"

/** A box drawn on one page, corner to corner. */
type Box = { viewName: ViewName; scene: Scene; from: ViewPoint; to: ViewPoint }

/** Takes every section it touches into the selection, beside those that are in it. */
export const boxTool: Tool<Box> = {
  start: ({ viewName, scene, page }) => ({ viewName, scene, from: page, to: page }),
  move: (box, { page }) => ({ ...box, to: page }),
  finish(box, { plan, selectedIds }): Finished {
    const touched = sectionsIn(box, plan).filter((id) => !selectedIds.includes(id))
    const { viewName, from, to } = box
    return { select: [...selectedIds, ...touched], box: { viewName, from, to } }
  },
}

function sectionsIn({ scene, from, to }: Box, plan: Plan): string[] {
  const between = (value: number, axis: 0 | 1) =>
    value >= Math.min(from[axis], to[axis]) && value <= Math.max(from[axis], to[axis])
  const isIn = ([x, y]: ViewPoint) => between(x, 0) && between(y, 1)
  return plan.sections
    .filter((section) => bandRing(section, plan, scene).some((ring) => ring.some(isIn)))
    .map(({ id }) => id)
}
