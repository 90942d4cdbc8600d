import type { SurfacePoint } from "../../../geometry/surface/frames"
import { bendWorkingParting, dragWorkingParting } from "../../core/edits/working/moveWorkingParting"
import { dividingOf } from "../../core/figures/workingSections"
import { dividerHandles, dividerPaths } from "../../drawing/workingSectionsMarks"
import { distanceToSegment } from "../paint/hitTest"
import type { Pointer, Situation, Tool } from "./tool"

/** A dividing parting in hand: all of it, or one point of it. */
type DividerHold = {
  id: string
  pointIndex: number | null
  from: SurfacePoint
  to: SurfacePoint
  movedMm: number
}

/** A hand that moves less than this only selects, mm. */
const restMm = 1.5

/** Takes hold of a handle of the selected dividing parting. */
export const dividerHandleTool: Tool<DividerHold> = { ...moving(), start: takeHandle }

/** Takes hold of a dividing parting where nothing lies over it. */
export const dividerTool: Tool<DividerHold> = { ...moving(), start: takeLine }

function moving(): Omit<Tool<DividerHold>, "start"> {
  return {
    move(hold, { at }, { head }) {
      if (!at) return hold
      const [from, to] = [head.surface.pointAt(hold.from), head.surface.pointAt(at)]
      const movedMm = Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2])
      return { ...hold, to: at, movedMm: Math.max(hold.movedMm, movedMm) }
    },
    finish({ id, pointIndex, from, to, movedMm }) {
      if (movedMm < restMm) return { divider: id }
      return pointIndex === null
        ? {
            label: { chapter: "placement", code: "move-section-line" },
            edit: dragWorkingParting(id, from, to),
            divider: id,
          }
        : {
            label: { chapter: "placement", code: "bend-section-line" },
            edit: bendWorkingParting(id, pointIndex, to),
            divider: id,
          }
    },
  }
}

function takeHandle(
  { at, page, scene, reachMm }: Pointer,
  { plan, dividerId }: Situation,
): DividerHold | null {
  const divider = dividingOf(plan).dividers.find(({ id }) => id === dividerId)
  if (!divider || !at) return null
  const near = dividerHandles(divider, scene)
    .map((handle) => ({ ...handle, apart: Math.hypot(handle.at[0] - page[0], handle.at[1] - page[1]) }))
    .sort((a, b) => a.apart - b.apart)
    .at(0)
  if (!near || near.apart > reachMm) return null
  return { id: divider.id, pointIndex: near.pointIndex, from: at, to: at, movedMm: 0 }
}

function takeLine({ at, page, scene, reachMm }: Pointer, { plan }: Situation): DividerHold | null {
  if (!at) return null
  const found = dividingOf(plan).dividers.findLast((_, index) =>
    dividerPaths(index, plan, scene).some((path) =>
      path.some((point, i) => i > 0 && distanceToSegment(page, path[i - 1], point) <= reachMm),
    ),
  )
  return found ? { id: found.id, pointIndex: null, from: at, to: at, movedMm: 0 } : null
}
