import { viewPoint } from "../../geometry/frames"
import { pointsEach } from "../../geometry/strands/grow"
import { add, scale, type Vec3 } from "../../geometry/vec3"
import type { OrthographicView } from "../../geometry/views"
import { paper } from "../plan/inks"
import type { Fall } from "../service/fall"
import { toScreen } from "./camera"
import { drawMarks } from "./drawMarks"
import { drawShade, type PaneState, penOf } from "./drawPane"
import type { HeadPicture } from "./headPicture"
import { type Layer, type Pieces, strandPieces } from "./strandPieces"

/** Ink tones, never colours: what is left as it is in darks, what is lightened in the light of the paper. */
const darks = ["#1d1814", "#2a231d", "#3a3129", "#4c4238", "#615548", "#7b6e5e"]
const lights = ["#b9a888", "#cfc0a3", "#e0d3ba", "#ede3cf", "#f7f0e2", "#fefbf3"]
const underDark = "#241d18"
const underLight = "#4a3f33"

const strandMm = 0.9
const underMm = 1.7
const underLightMm = 1.15

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
  const stroke = (tones: readonly (readonly number[])[], color: string, mm: number, cap: CanvasLineCap) => {
    if (!tones.some(({ length }) => length > 0)) return
    context.lineCap = cap
    context.strokeStyle = color
    context.lineWidth = Math.max(0.6, mm * pxPerMm)
    context.beginPath()
    for (const stretches of tones) trace(context, stretches, xy)
    context.stroke()
  }
  stroke(dark, underDark, underMm, "butt")
  for (const [tone, stretches] of dark.entries()) stroke([stretches], darks[tone], strandMm, "butt")
  for (const [tone, stretches] of tip.entries()) stroke([stretches], darks[tone], strandMm, "round")
  stroke(light, underLight, underMm, "butt")
  for (const [tone, stretches] of light.entries()) stroke([stretches], lights[tone], underLightMm, "round")
}

/** A lock is broader than the strand it is drawn for: its first stroke starts so much of a step before the root. */
const rootShare = 0.22

function trace(context: CanvasRenderingContext2D, stretches: readonly number[], xy: Float32Array) {
  for (let i = 0; i < stretches.length; i += 2) {
    const [first, last] = [stretches[i], stretches[i + 1]]
    const back = first % pointsEach === 0 ? rootShare : 0
    context.moveTo(
      xy[2 * first] + back * (xy[2 * first] - xy[2 * first + 2]),
      xy[2 * first + 1] + back * (xy[2 * first + 1] - xy[2 * first + 3]),
    )
    for (let k = first + 1; k <= last; k++) context.lineTo(xy[2 * k], xy[2 * k + 1])
  }
}

/** The head as paper, its shade and its lines. */
function drawBody(context: CanvasRenderingContext2D, pane: PaneState, view: OrthographicView) {
  const { picture, camera } = pane
  const { shade } = picture
  if (!shade) return
  const [x, y] = toScreen(camera, viewPoint(shade.left, shade.top))
  context.imageSmoothingEnabled = true
  context.imageSmoothingQuality = "high"
  context.drawImage(bodyOf(picture, view), x, y, shade.width * camera.pxPerMm, shade.height * camera.pxPerMm)
  drawShade(context, picture, camera)
  drawMarks(
    context,
    picture.lines.filter((mark) => !("ink" in mark && mark.ink === "hairline")),
    penOf(pane),
  )
}

const bodies = new WeakMap<HeadPicture, HTMLCanvasElement>()

/** The outline of a head filled with paper, in the pixels of its shade, its edge soft and a little within the drawn line. */
function bodyOf(picture: HeadPicture, view: OrthographicView): HTMLCanvasElement {
  const known = bodies.get(picture)
  if (known) return known
  const body = document.createElement("canvas")
  const { shade } = picture
  const pen = body.getContext("2d")
  if (!shade || !pen) return body
  body.width = shade.image.width
  body.height = shade.image.height
  const filled = filledPixels(picture, view, body.width, body.height)
  const pixels = pen.createImageData(body.width, body.height)
  for (let i = body.width + 1; i < filled.length - body.width - 1; i++)
    pixels.data.set([...paperRgb, softened(filled, i, body.width)], 4 * i)
  pen.putImageData(pixels, 0, 0)
  fadeNeck(pen, view, picture)
  bodies.set(picture, body)
  return body
}

const [neckFadesMm, neckEndsMm] = [-96, -154]

/** The neck goes over into the hair behind it, as into the paper where there is none. */
function fadeNeck(pen: CanvasRenderingContext2D, { up }: OrthographicView, { scene, shade }: HeadPicture) {
  if (!shade || up[2] < 0.5) return
  const rowOf = (z: number) =>
    ((shade.top - up[2] * z * scene.head.axes[2]) / shade.height) * shade.image.height
  const fade = pen.createLinearGradient(0, rowOf(neckFadesMm), 0, rowOf(neckEndsMm))
  fade.addColorStop(0, "transparent")
  fade.addColorStop(1, paper)
  pen.globalCompositeOperation = "destination-out"
  pen.fillStyle = fade
  pen.fillRect(0, rowOf(neckFadesMm), shade.image.width, shade.image.height)
}

/** 1 in each pixel of the shade that shows head or ear. */
function filledPixels({ shade, scene }: HeadPicture, view: OrthographicView, columns: number, rows: number) {
  const filled = new Uint8Array(columns * rows)
  if (!shade) return filled
  const mm = shade.width / columns
  const behind: Vec3 = scale(view.toward, -400)
  for (let i = 0; i < filled.length; i++) {
    const across = scale(view.right, shade.left + ((i % columns) + 0.5) * mm)
    const above = scale(view.up, shade.top - (Math.floor(i / columns) + 0.5) * mm)
    filled[i] = scene.hides(add(behind, add(across, above))) ? 1 : 0
  }
  return filled
}

const paperRgb = [1, 3, 5].map((from) => Number.parseInt(paper.slice(from, from + 2), 16))

/** How opaque a pixel is, 0 to 255, by how many of the nine about it are filled. */
function softened(filled: Uint8Array, i: number, columns: number) {
  let sum = 0
  for (const row of [i - columns, i, i + columns]) sum += filled[row - 1] + filled[row] + filled[row + 1]
  return 255 * Math.max(0, (sum - 4) / 5)
}
