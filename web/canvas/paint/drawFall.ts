import { pointsEach } from "../../../geometry/strands/grow"
import type { OrthographicView } from "../../../geometry/surface/views"
import type { Fall } from "../../core/fall/fall"
import { paper } from "../../drawing/inks"
import { drawMarks } from "./drawMarks"
import { drawOverShade, drawShade, penOf } from "./drawPane"
import { headSilhouette } from "./headSilhouette"
import type { PaneState } from "./paneState"
import { type Layer, type Pieces, strandPieces } from "./strandPieces"

/** Ink tones, never colours: what is left as it is in darks, what is lightened in the light of the paper. */
const darks = ["#1d1814", "#2a231d", "#3a3129", "#4c4238", "#615548", "#7b6e5e"]
const lights = ["#b9a888", "#cfc0a3", "#e0d3ba", "#ede3cf", "#f7f0e2", "#fefbf3"]
const underDark = "#241d18"
const underLight = "#4a3f33"

/** How broad a stroke is, mm, how it ends, and which share of a step it starts past the root; before it, as a lock is broader than a strand. */
type Stroke = { mm: number; cap: CanvasLineCap; root: number }
const under: Stroke = { mm: 1.7, cap: "butt", root: 0.1 }
const fine: Stroke = { mm: 0.9, cap: "round", root: -0.24 }
const tapered: Stroke = { ...fine, mm: 0.75 }
const bright: Stroke = { mm: 1.15, cap: "round", root: -0.2 }

/** The head with its hair: what falls behind it, the head itself as paper, and what falls before it. */
export function drawFall(context: CanvasRenderingContext2D, pane: PaneState, fall: Fall) {
  const { view } = pane.picture.scene
  if (view.kind !== "orthographic") return
  const pieces = strandPieces(pane, view, fall)
  context.fillStyle = paper
  context.fillRect(0, 0, pane.camera.width, pane.camera.height)
  context.lineJoin = "round"
  for (const layer of pieces.behind) drawLayer(context, layer, pieces, pane.camera.pxPerMm)
  drawBody(context, pane, view)
  for (const layer of pieces.before) drawLayer(context, layer, pieces, pane.camera.pxPerMm)
}

/** Each layer darkens what lies under it before its own strands are drawn, so that locks stand apart. */
function drawLayer(
  context: CanvasRenderingContext2D,
  { dark, tip, light }: Layer,
  { xy }: Pieces,
  pxPerMm: number,
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
  stroke(dark, underDark, under)
  for (const [tone, stretches] of dark.entries()) stroke([stretches], darks[tone], fine)
  for (const [tone, stretches] of tip.entries()) stroke([stretches], darks[tone], tapered)
  stroke(light, underLight, under)
  for (const [tone, stretches] of light.entries()) stroke([stretches], lights[tone], bright)
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
function drawBody(context: CanvasRenderingContext2D, pane: PaneState, view: OrthographicView) {
  const { picture, camera } = pane
  const { shade } = picture
  if (!shade) return
  drawOverShade(context, headSilhouette(picture, view), shade, camera)
  drawShade(context, picture, camera)
  drawMarks(
    context,
    picture.lines.filter((mark) => !("ink" in mark && mark.ink === "hairline")),
    penOf(pane),
  )
}
