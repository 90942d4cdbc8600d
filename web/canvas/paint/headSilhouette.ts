import { add, scale, type Vec3 } from "../../../geometry/surface/vec3"
import type { OrthographicView } from "../../../geometry/surface/views"
import { paper } from "../../drawing/inks"
import type { HeadPicture } from "./headPicture"

const bodies = new WeakMap<HeadPicture, HTMLCanvasElement>()

/** The outline of a head filled with paper, in the pixels of its shade, its edge soft and a little within the drawn line. */
export function headSilhouette(picture: HeadPicture, view: OrthographicView): HTMLCanvasElement {
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

const [neckFadesMm, neckEndsMm] = [-118, -155]

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
