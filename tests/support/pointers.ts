import { type SurfacePoint, viewPoint } from "../../geometry/surface/frames"
import { fixedViews, toView } from "../../geometry/surface/views"
import type { Pointer, Situation } from "../../web/canvas/tools/tool"
import type { Plan } from "../../web/core/document/schema"
import { headOf } from "../../web/core/figures/measured"

/** A hand on the top view of a plan's head, at a place of the scalp or, without one, beside the head. */
export function pointerAt(plan: Plan, at: SurfacePoint | null, alt = false): Pointer {
  const head = headOf(plan)
  const view = fixedViews.top
  return {
    viewName: "top",
    scene: { head, view, hides: () => false },
    page: at ? toView(view, head.surface, at) : viewPoint(300, 300),
    at,
    reachMm: 3,
    shift: false,
    alt,
    adds: false,
  }
}

export const situationOf = (plan: Plan, dividerId: string | null = null): Situation => ({
  plan,
  head: headOf(plan),
  selectedIds: [],
  dividerId,
})
