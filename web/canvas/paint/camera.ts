import { type ScreenPoint, screenPoint, type ViewPoint, viewPoint } from "../../../geometry/surface/frames"

/** How a view is laid on a pane: the page point in the pane's middle (mm), the zoom, the pane's size in CSS pixels. */
export type Camera = { centre: ViewPoint; pxPerMm: number; width: number; height: number }

/**
 * The largest camera that shows a whole frame of the page: left, bottom, right, top in mm. Where the pane is higher than
 * the frame, a share of the height to spare stands above it.
 */
export function fitCamera(
  [left, bottom, right, top]: readonly [number, number, number, number],
  width: number,
  height: number,
  shareAbove = 0.5,
): Camera {
  const pxPerMm = Math.max(0.05, Math.min(width / (right - left), height / (top - bottom)))
  const spareMm = height / pxPerMm - (top - bottom)
  const middle = (bottom + top) / 2 + spareMm * (shareAbove - 0.5)
  return { centre: viewPoint((left + right) / 2, middle), pxPerMm, width, height }
}

/** Of the height to spare round a hairline, most shows the face below it. */
export const shareAboveHairline = 0.2

export const toScreen = ({ centre, pxPerMm, width, height }: Camera, [x, y]: ViewPoint): ScreenPoint =>
  screenPoint(width / 2 + (x - centre[0]) * pxPerMm, height / 2 - (y - centre[1]) * pxPerMm)

export const fromScreen = ({ centre, pxPerMm, width, height }: Camera, [x, y]: ScreenPoint): ViewPoint =>
  viewPoint(centre[0] + (x - width / 2) / pxPerMm, centre[1] - (y - height / 2) / pxPerMm)

/** Move the page under the pane by pixels. */
export const panBy = (camera: Camera, dx: number, dy: number): Camera => ({
  ...camera,
  centre: viewPoint(camera.centre[0] - dx / camera.pxPerMm, camera.centre[1] + dy / camera.pxPerMm),
})

const nearest = 12
const farthest = 0.4

/** Zoom by a factor so that the page point under `at` stays there. */
export function zoomAbout(camera: Camera, at: ScreenPoint, factor: number): Camera {
  const pxPerMm = Math.min(nearest, Math.max(farthest, camera.pxPerMm * factor))
  const held = fromScreen(camera, at)
  const zoomed = { ...camera, pxPerMm }
  const now = toScreen(zoomed, held)
  return panBy(zoomed, at[0] - now[0], at[1] - now[1])
}
