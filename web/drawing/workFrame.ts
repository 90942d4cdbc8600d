import type { ViewPoint } from "../../geometry/surface/frames"
import type { Vec3 } from "../../geometry/surface/vec3"
import type { ViewName } from "../../geometry/surface/views"
import type { Plan } from "../core/document/schema"
import { viewFrame } from "./labelRings"
import { planMarks, type Scene } from "./marks"

/** Left, bottom, right and top of a part of a view, mm of its page. */
export type Frame = readonly [left: number, bottom: number, right: number, top: number]

/** Brow to crown on the unscaled head, with room for the numbers; a view without one shows the whole head. */
const hairlineFrames: Partial<Record<ViewName, Frame>> = {
  front: [-104, 8, 104, 152],
  left: [-132, -24, 96, 152],
  right: [-96, -24, 132, 152],
  top: [-104, -36, 104, 130],
}

export const hasHairlineFrame = (name: ViewName) => hairlineFrames[name] !== undefined

/** The part of a view where a face frame is worked. */
export function hairlineFrame(name: ViewName, axes: Vec3): Frame {
  const frame = hairlineFrames[name]
  if (!frame) return viewFrame(name, axes)
  const [left, bottom, right, top] = frame
  const grow = Math.max(...axes)
  return [left * grow, bottom * grow, right * grow, top * grow]
}

/** Whether all that can be seen of a plan's sections in a view lies in its hairline frame. */
export function fitsHairlineFrame(plan: Plan, name: ViewName, scene: Scene): boolean {
  const [left, bottom, right, top] = hairlineFrame(name, scene.head.axes)
  const isInside = ([x, y]: ViewPoint) => x >= left && x <= right && y >= bottom && y <= top
  return planMarks(plan, scene).every((mark) => !("path" in mark) || mark.path.every(isInside))
}
