import { pointsEach } from "../../../geometry/strands/grow"
import type { Fall } from "../../core/fall/fall"
import type { Shown } from "../../core/fall/strandColours"
import { colourOf, type HairShade } from "../../core/pigment/hairColour"
import { screenBytes } from "../../core/pigment/screenColour"
import { paper } from "../../drawing/inks"
import { drawBust } from "./drawBust"
import { drawMarks } from "./drawMarks"
import { drawOverShade, drawShade, penOf } from "./drawPane"
import { headSilhouette } from "./headSilhouette"
import type { PaneState } from "./paneState"
import { type Layer, type Pieces, strandPieces } from "./strandPieces"

/** How brightly the light falls on the six tones of a colour, and on what shows between strands. */
const darkLights = [0.42, 0.58, 0.78, 1, 1.25, 1.55]
const lightLights = [0.62, 0.76, 0.9, 1.02, 1.14, 1.26]
const underLight = 0.3

type Inks = { dark: readonly string[]; light: readonly string[]; underDark: string; underLight: string }

/** The tones of the hair as it is about the face, and of what is lifted. */
function inksOf({ shades }: Shown): Inks {
  const dark: HairShade = {
    kind: "natural",
    level: shades.now.hairline.midLengths,
    whiteShare: shades.whiteShare,
  }
  const light: HairShade = { kind: "lifted", level: shades.aimed, toned: shades.finish }
  return {
    dark: darkLights.map((share) => lit(dark, share)),
    light: lightLights.map((share) => lit(light, share)),
    underDark: lit(dark, underLight),
    underLight: lit(light, underLight),
  }
}

function lit(shade: HairShade, share: number) {
  const [red, green, blue] = colourOf(shade)
  return `rgb(${screenBytes([red * share, green * share, blue * share]).join(" ")})`
}

/** How broad a stroke is, mm, how it ends, and which share of a step it starts past the root; before it, as a lock is broader than a strand. */
type Stroke = { mm: number; cap: CanvasLineCap; root: number }
const under: Stroke = { mm: 1.7, cap: "butt", root: 0.1 }
const fine: Stroke = { mm: 0.9, cap: "round", root: -0.24 }
const tapered: Stroke = { ...fine, mm: 0.75 }
const bright: Stroke = { mm: 1.15, cap: "round", root: -0.2 }

/** The head with its hair: what falls behind it, the head itself as paper, and what falls before it. */
export function drawFall(context: CanvasRenderingContext2D, pane: PaneState, fall: Fall, shown: Shown) {
  const { view } = pane.picture.scene
  if (view.kind !== "orthographic") return
  const pieces = strandPieces(pane, view, fall, shown.grownMm)
  const inks = inksOf(shown)
  context.fillStyle = paper
  context.fillRect(0, 0, pane.camera.width, pane.camera.height)
  context.lineJoin = "round"
  for (const layer of pieces.behind) drawLayer(context, layer, pieces, { inks, pxPerMm: pane.camera.pxPerMm })
  drawBust(context, { camera: pane.camera, axes: pane.head.axes, view })
  drawBody(context, pane)
  for (const layer of pieces.before) drawLayer(context, layer, pieces, { inks, pxPerMm: pane.camera.pxPerMm })
}

/** Each layer darkens what lies under it before its own strands are drawn, so that locks stand apart. */
function drawLayer(
  context: CanvasRenderingContext2D,
  { dark, tip, light }: Layer,
  { xy }: Pieces,
  { inks, pxPerMm }: { inks: Inks; pxPerMm: number },
) {
  const stroke = (tones: readonly (readonly number[])[], color: string, { mm, cap, root }: Stroke) => {
    if (!tones.some(({ length }) => length > 0)) return
    context.lineCap = cap
    context.strokeStyle = color
    context.lineWidth = Math.max(0.6, mm * pxPerMm)
    context.beginPath()
    for (const stretches of tones) trace(context, stretches, xy, root)
    context.stroke()
  }
  stroke(dark, inks.underDark, under)
  for (const [tone, stretches] of dark.entries()) stroke([stretches], inks.dark[tone], fine)
  for (const [tone, stretches] of tip.entries()) stroke([stretches], inks.dark[tone], tapered)
  stroke(light, inks.underLight, under)
  for (const [tone, stretches] of light.entries()) stroke([stretches], inks.light[tone], bright)
}

function trace(
  context: CanvasRenderingContext2D,
  stretches: readonly number[],
  xy: Float32Array,
  root: number,
) {
  for (let i = 0; i < stretches.length; i += 2) {
    const [first, last] = [stretches[i], stretches[i + 1]]
    const past = first % pointsEach === 0 ? root : 0
    context.moveTo(
      xy[2 * first] + past * (xy[2 * first + 2] - xy[2 * first]),
      xy[2 * first + 1] + past * (xy[2 * first + 3] - xy[2 * first + 1]),
    )
    for (let k = first + 1; k <= last; k++) context.lineTo(xy[2 * k], xy[2 * k + 1])
  }
}

/** The head as paper, its shade and its lines. */
export function drawBody(context: CanvasRenderingContext2D, pane: PaneState) {
  const { picture, camera } = pane
  const { shade, scene } = picture
  const { view } = scene
  if (!shade || view.kind !== "orthographic") return
  drawOverShade(context, headSilhouette(picture, view), shade, camera)
  drawShade(context, picture, camera)
  drawMarks(
    context,
    picture.lines.filter((mark) => !("ink" in mark && mark.ink === "hairline")),
    penOf(pane),
  )
}
