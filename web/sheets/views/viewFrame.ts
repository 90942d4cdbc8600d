import { viewPoint } from "../../../geometry/surface/frames"
import type { PaperView, Picture } from "../../drawing/headDrawing"
import type { LabelRing } from "../../drawing/labels"
import { ringsApartMm } from "./placeNames"

/** The part of a view that is printed, mm at life size, and the oval round it on which numbers stand. */
export type ViewFrame = Edges & { ring: LabelRing; count: 1 | 2 }
/** A part of a view, mm at life size. */
export type Edges = { left: number; bottom: number; right: number; top: number }

/** Below the chin only a little neck is printed, mm on the unscaled head. */
const neckMm = -118
/** How far from the drawing a number is centred, mm of paper. */
const offDrawingMm = 7.5
const halfNumberMm = 4
/** In profile a few numbers find room over the face; more need the back of the head as well. */
const fewNames = 9
const backOfProfileMm = 1
/** More names than this stand in two rings. */
const oneRing = 16

/** The frame of a drawing printed at a scale with so many names round it. */
export function frameOf(
  name: PaperView,
  picture: Picture,
  page: { scale: number; names: number },
): ViewFrame {
  const drawn = edgesOf(picture, name === "top" ? -Infinity : neckMm * picture.scene.head.axes[2])
  const count = page.names > oneRing ? 2 : 1
  const backMm = page.names > fewNames ? offDrawingMm : backOfProfileMm
  const ring = {
    left: drawn.left - (name === "right" ? backMm : offDrawingMm) / page.scale,
    right: drawn.right + (name === "left" ? backMm : offDrawingMm) / page.scale,
    bottom: drawn.bottom - offDrawingMm / page.scale,
    top: drawn.top + offDrawingMm / page.scale,
  }
  // Foils of the nape and of the crown are numbered under the drawing, where a face has none.
  const isNumberedBelow = name === "top" || (name === "back" && page.names > 0) || count === 2
  const outside = (halfNumberMm + (count - 1) * ringsApartMm) / page.scale
  return {
    left: ring.left - outside,
    right: ring.right + outside,
    bottom: isNumberedBelow ? ring.bottom - outside : drawn.bottom,
    top: ring.top + outside,
    count,
    ring: {
      centre: viewPoint((ring.left + ring.right) / 2, (ring.bottom + ring.top) / 2),
      halfWidthMm: (ring.right - ring.left) / 2,
      halfHeightMm: (ring.top - ring.bottom) / 2,
    },
  }
}

/** How far the drawing reaches, mm of the view, above a floor. */
function edgesOf({ lines }: Picture, floor: number): Edges {
  const points = lines.flatMap(({ path }) => path).filter(([, y]) => y >= floor)
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)]
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) }
}
