import { bustMesh } from "../../../geometry/portrait/mesh/bustMesh"
import { viewPoint } from "../../../geometry/surface/frames"
import { dot, multiply, type Vec3 } from "../../../geometry/surface/vec3"
import type { OrthographicView } from "../../../geometry/surface/views"
import { type Camera, toScreen } from "./camera"

/** Paper in a little shade. */
const skin = "#f0ebe3"
/** The neck of the head is drawn down to here, mm. */
const neckEndsMm = -100

/** Neck, shoulders and chest as one plain shape, below the head that is drawn over it. */
export function drawBust(
  context: CanvasRenderingContext2D,
  { camera, axes, view }: { camera: Camera; axes: Vec3; view: OrthographicView },
) {
  const { points, triangles } = bustMesh()
  const [right, up] = [multiply(view.right, axes), multiply(view.up, axes)]
  const corner = (point: number) => {
    const at: Vec3 = [points[3 * point], points[3 * point + 1], points[3 * point + 2]]
    return toScreen(camera, viewPoint(dot(at, right), dot(at, up)))
  }
  context.fillStyle = skin
  context.beginPath()
  for (let i = 0; i < triangles.length; i += 3) {
    if (points[3 * triangles[i] + 2] > neckEndsMm) continue
    const [a, b, c] = [corner(triangles[i]), corner(triangles[i + 1]), corner(triangles[i + 2])]
    // What faces away would take the fill back: it runs the other way round.
    if ((b[0] - a[0]) * (c[1] - a[1]) > (b[1] - a[1]) * (c[0] - a[0])) continue
    context.moveTo(a[0], a[1])
    context.lineTo(b[0], b[1])
    context.lineTo(c[0], c[1])
    context.closePath()
  }
  context.fill()
}
