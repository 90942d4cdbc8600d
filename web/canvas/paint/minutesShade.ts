import { isFoil } from "../../../geometry/section/section"
import type { ViewPoint } from "../../../geometry/surface/frames"
import { foilsAt } from "../../core/schedule/foilsAt"
import { type MinutesTone, minutesTone } from "../../core/schedule/minutesTone"
import { timedPlan } from "../../core/schedule/timedPlan"
import { black, paper } from "../../drawing/inks"
import { bandRing } from "../../drawing/marks"
import { type Camera, toScreen } from "./camera"
import type { PaneState } from "./paneState"

/** Every foil of a pane, shaded by the minutes it has been on; as not on yet where the plan cannot be timed. */
export function drawMinutes(context: CanvasRenderingContext2D, pane: PaneState, atMin: number) {
  const { plan, picture, camera } = pane
  const timed = timedPlan(plan)
  const foils = timed.ok ? foilsAt(timed.schedule, atMin) : null
  for (const section of plan.sections.filter(isFoil)) {
    const tone = minutesTone(foils?.get(section.id))
    for (const ring of bandRing(section, plan, picture.scene)) shade(context, ring, tone, camera)
  }
}

function shade(
  context: CanvasRenderingContext2D,
  ring: readonly ViewPoint[],
  { inkShare, weightPx, dashPx }: MinutesTone,
  camera: Camera,
) {
  context.beginPath()
  for (const [i, point] of ring.entries()) {
    const [x, y] = toScreen(camera, point)
    if (i === 0) context.moveTo(x, y)
    else context.lineTo(x, y)
  }
  context.closePath()
  context.fillStyle = paper
  context.fill()
  context.globalAlpha = inkShare
  context.fillStyle = black
  context.fill()
  context.globalAlpha = 1
  context.strokeStyle = black
  context.lineWidth = weightPx
  context.setLineDash([...dashPx])
  context.stroke()
}
