import type { Section } from "../../../geometry/section/section"
import { type ViewPoint, viewPoint } from "../../../geometry/surface/frames"
import { toView } from "../../../geometry/surface/views"
import type { Plan } from "../../core/document/schema"
import { bandMiddle, isSeen, type Scene } from "../../drawing/marks"

/** What a hand can take hold of on a selected section: a point of its parting, or its depth. */
export type Handle =
  | { kind: "bend"; pointIndex: number; at: ViewPoint }
  | { kind: "depth"; at: ViewPoint; outward: ViewPoint }

const depthHandleMm = 9

/** The handles of a section on one page, where the viewer can see them. */
export function handlesOf(section: Section, plan: Plan, scene: Scene): Handle[] {
  const last = section.parting.length - 1
  const indices = last > 1 ? [0, Math.round(last / 2), last] : [0, last]
  const bends = indices
    .filter((index) => isSeen(section.parting[index], scene))
    .map(
      (pointIndex): Handle => ({
        kind: "bend",
        pointIndex,
        at: toView(scene.view, scene.head.surface, section.parting[pointIndex]),
      }),
    )
  return [...bends, ...depthHandle(section, plan, scene)]
}

/** The depth handle stands a little past the far edge, so that a finger can tell it from the parting. */
function depthHandle(section: Section, plan: Plan, scene: Scene): Handle[] {
  const middle = bandMiddle(section, plan, scene)
  if (!middle) return []
  const { near, far } = middle
  const apart = Math.hypot(far[0] - near[0], far[1] - near[1]) || 1
  const outward = viewPoint((far[0] - near[0]) / apart, (far[1] - near[1]) / apart)
  const at = viewPoint(far[0] + outward[0] * depthHandleMm, far[1] + outward[1] * depthHandleMm)
  return [{ kind: "depth", at, outward }]
}
