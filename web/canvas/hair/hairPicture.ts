import type { Fall } from "../../core/fall/fall"
import { type Shown, strandColours } from "../../core/fall/strandColours"
import { paper } from "../../drawing/inks"
import { drawBody } from "../paint/drawFall"
import type { PaneState } from "../paint/paneState"
import { type HairPainter, makeHairPainter } from "./hairPainter"

/** Strands drawn for each that was grown: while the head turns, and at rest. */
const eachMoving = 1
const eachAtRest = 4

let painter: HairPainter | null | undefined

/** What draws hair by the device's graphics, one for all views; null where there is none or it has been taken back. */
function painterHere(): HairPainter | null {
  painter ??= makeHairPainter()
  if (painter?.works() === false) painter = null
  return painter
}

let coloured: { fall: Fall; shown: Shown; bytes: Uint8Array } | null = null

function coloursOf(fall: Fall, shown: Shown): Uint8Array {
  const isSame =
    coloured?.fall === fall &&
    coloured.shown.shades === shown.shades &&
    coloured.shown.grownMm === shown.grownMm
  if (!coloured || !isSame) coloured = { fall, shown, bytes: strandColours(fall, shown) }
  return coloured.bytes
}

/** The drawing of the head that lies behind the hair. */
let page: HTMLCanvasElement | null = null

/** The picture of a fall on a pane, in device pixels; null where there are no graphics to draw it with. */
export function hairPicture(
  pane: PaneState,
  fall: Fall,
  { shown, isAtRest, pxRatio }: { shown: Shown; isAtRest: boolean; pxRatio: number },
): HTMLCanvasElement | null {
  const { view } = pane.picture.scene
  const here = painterHere()
  if (!here || view.kind !== "orthographic") return null
  page ??= document.createElement("canvas")
  drawPage(page, pane, pxRatio)
  const each = isAtRest ? eachAtRest : eachMoving
  here.paint(
    { strands: fall.strands, colours: coloursOf(fall, shown) },
    { view, camera: pane.camera, axes: pane.head.axes, pxRatio, page, each },
  )
  return here.works() ? here.canvas : null
}

/** The head on its paper, as large as the picture. */
function drawPage(canvas: HTMLCanvasElement, pane: PaneState, pxRatio: number) {
  const { width, height } = pane.camera
  canvas.width = Math.max(1, Math.round(width * pxRatio))
  canvas.height = Math.max(1, Math.round(height * pxRatio))
  const context = canvas.getContext("2d")
  if (!context) return
  context.scale(pxRatio, pxRatio)
  context.fillStyle = paper
  context.fillRect(0, 0, width, height)
  drawBody(context, pane)
}
