import type { ViewPoint } from "../../../geometry/surface/frames"
import { type InkName, inks, paper } from "../../drawing/inks"
import type { Mark } from "../../drawing/mark"
import { type Camera, toScreen } from "./camera"

/** Points of the page to CSS pixels. */
const pxPerPt = 96 / 72

/** How large lines and letters are on this pane: small panes are drawn with a finer pen. */
export type Pen = { camera: Camera; weight: number; letters: number }

/** Draw marks on a 2D context whose unit is the CSS pixel. */
export function drawMarks(context: CanvasRenderingContext2D, marks: readonly Mark[], pen: Pen) {
  context.lineCap = "round"
  context.lineJoin = "round"
  for (const mark of marks) {
    switch (mark.kind) {
      case "area":
        fill(context, mark.path, mark.ink, pen)
        break
      case "line":
        stroke(context, [mark.path], mark.closed === true, mark.ink, pen)
        break
      case "hatch":
        stroke(context, mark.segments, false, mark.ink, pen)
        break
      case "dot":
        dot(context, mark.at, mark.ink, pen)
        break
      case "label":
        if (mark.leader) leader(context, mark.leader, mark.at, pen)
        break
    }
  }
  for (const mark of marks) if (mark.kind === "label") label(context, mark.at, mark.text, mark.ink, pen)
}

function trace(context: CanvasRenderingContext2D, path: readonly ViewPoint[], camera: Camera) {
  for (const [i, point] of path.entries()) {
    const [x, y] = toScreen(camera, point)
    if (i === 0) context.moveTo(x, y)
    else context.lineTo(x, y)
  }
}

function fill(context: CanvasRenderingContext2D, path: readonly ViewPoint[], ink: InkName, { camera }: Pen) {
  const { color, opacity = 1 } = inkOf(ink)
  context.beginPath()
  trace(context, path, camera)
  context.globalAlpha = opacity
  context.fillStyle = color
  context.fill()
  context.globalAlpha = 1
}

function stroke(
  context: CanvasRenderingContext2D,
  paths: readonly (readonly ViewPoint[])[],
  closed: boolean,
  ink: InkName,
  { camera, weight }: Pen,
) {
  const { color, weightPt, dashPt } = inkOf(ink)
  context.beginPath()
  for (const path of paths) {
    trace(context, path, camera)
    if (closed) context.closePath()
  }
  context.strokeStyle = color
  context.lineWidth = weightPt * pxPerPt * weight
  context.setLineDash(dashPt ? dashPt.map((pt) => pt * pxPerPt) : [])
  context.stroke()
}

/** A thin line from a number to what it names, ending in a point that can be seen among others. */
function leader(context: CanvasRenderingContext2D, from: ViewPoint, to: ViewPoint, pen: Pen) {
  stroke(context, [[from, to]], false, "leader", pen)
  const [x, y] = toScreen(pen.camera, from)
  context.beginPath()
  context.arc(x, y, 2.4, 0, 2 * Math.PI)
  context.fillStyle = inkOf("leader").color
  context.fill()
}

function dot(context: CanvasRenderingContext2D, at: ViewPoint, ink: InkName, { camera, weight }: Pen) {
  const [x, y] = toScreen(camera, at)
  const { color, weightPt } = inkOf(ink)
  context.beginPath()
  context.arc(x, y, 6 * weight, 0, 2 * Math.PI)
  context.fillStyle = paper
  context.fill()
  context.setLineDash([])
  context.strokeStyle = color
  context.lineWidth = weightPt * pxPerPt
  context.stroke()
}

function label(context: CanvasRenderingContext2D, at: ViewPoint, text: string, ink: InkName, pen: Pen) {
  const [x, y] = toScreen(pen.camera, at)
  const { color, weightPt } = inkOf(ink)
  context.font = `600 ${weightPt * pxPerPt * pen.letters}px "Source Sans 3 Variable", sans-serif`
  context.textAlign = "center"
  context.textBaseline = "middle"
  context.setLineDash([])
  context.strokeStyle = paper
  context.lineWidth = 6
  context.strokeText(text, x, y)
  context.fillStyle = color
  context.fillText(text, x, y)
}

const inkOf = (
  name: InkName,
): { color: string; weightPt: number; dashPt?: readonly number[]; opacity?: number } => inks[name]
