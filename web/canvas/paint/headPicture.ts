import { drawHead, type HeadDrawing } from "../../../geometry/portrait/outline"
import type { Head } from "../../../geometry/scalp/head"
import { fixedViews, type OrthographicView, turnedView, type ViewName } from "../../../geometry/surface/views"
import { type InkName, shadeRgb } from "../../drawing/inks"
import type { Mark } from "../../drawing/mark"
import { hairlineMarks, type Scene } from "../../drawing/marks"

/** All that stays still on one page while sections are drawn: the head, its shade, its hairline. */
export type HeadPicture = {
  scene: Scene
  lines: readonly Mark[]
  shade: { image: HTMLCanvasElement; left: number; top: number; width: number; height: number } | null
}

const restingShadeMm = 1
const turningShadeMm = 3

const remembered = new WeakMap<Head, Map<ViewName, HeadPicture>>()

/** The picture of a head in a view that never turns, made once. */
function fixedPicture(head: Head, name: Exclude<ViewName, "turned">): HeadPicture {
  let ofHead = remembered.get(head)
  if (!ofHead) {
    ofHead = new Map()
    remembered.set(head, ofHead)
  }
  const known = ofHead.get(name)
  if (known) return known
  const fresh =
    name === "unrolled" ? unrolledPicture(head) : drawnPicture(head, fixedViews[name], restingShadeMm)
  ofHead.set(name, fresh)
  return fresh
}

/** The picture of a head in any view; `yaw` and `pitch` (radians) count for the turntable alone, made anew for each turn. */
export const pictureOf = (head: Head, name: ViewName, yaw: number, pitch: number): HeadPicture =>
  name === "turned"
    ? drawnPicture(head, turnedView(yaw, pitch), turningShadeMm, turnedImage())
    : fixedPicture(head, name)

/** The picture of a turned head that has come to rest, as fine as those of the views that never turn. */
export const restingPicture = (head: Head, yaw: number, pitch: number): HeadPicture =>
  drawnPicture(head, turnedView(yaw, pitch), restingShadeMm)

function drawnPicture(
  head: Head,
  view: OrthographicView,
  mmPerPixel: number,
  image = newImage(),
): HeadPicture {
  const drawing = drawHead(head.axes, view, mmPerPixel)
  const scene: Scene = { head, view, hides: (point, marginMm) => drawing.depth.hides(point, marginMm) }
  const lines = drawing.lines.map(({ weight, path }): Mark => ({ kind: "line", path, ink: headInks[weight] }))
  return { scene, lines: [...lines, ...hairlineMarks(scene)], shade: shadeImage(drawing, image) }
}

function unrolledPicture(head: Head): HeadPicture {
  const scene: Scene = { head, view: fixedViews.unrolled, hides: () => false }
  const hairline = hairlineMarks(scene).map((mark): Mark => ({ ...mark, ink: "head-medium" }))
  return { scene, lines: hairline, shade: null }
}

const headInks: Record<HeadDrawing["lines"][number]["weight"], InkName> = {
  bold: "head-bold",
  medium: "head-medium",
  fine: "head-fine",
}

const newImage = () => document.createElement("canvas")

/** One image for all turns: there is one turntable, and each turn takes the place of the last. */
let ofTurntable: HTMLCanvasElement | null = null
const turnedImage = () => {
  ofTurntable ??= newImage()
  return ofTurntable
}

function shadeImage({ shade }: HeadDrawing, image: HTMLCanvasElement): HeadPicture["shade"] {
  image.width = shade.width
  image.height = shade.height
  const context = image.getContext("2d")
  if (!context) return null
  const pixels = context.createImageData(shade.width, shade.height)
  for (let i = 0; i < shade.alpha.length; i++) {
    pixels.data[4 * i] = shadeRgb[0]
    pixels.data[4 * i + 1] = shadeRgb[1]
    pixels.data[4 * i + 2] = shadeRgb[2]
    pixels.data[4 * i + 3] = shade.alpha[i]
  }
  context.putImageData(pixels, 0, 0)
  const { mmPerPixel, left, top } = shade
  return { image, left, top, width: shade.width * mmPerPixel, height: shade.height * mmPerPixel }
}
