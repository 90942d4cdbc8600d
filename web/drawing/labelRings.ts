import type { Hair } from "../../geometry/hair/hair"
import { type ViewPoint, viewPoint } from "../../geometry/surface/frames"
import type { Vec3 } from "../../geometry/surface/vec3"
import type { ViewName } from "../../geometry/surface/views"
import type { LabelRing } from "./labels"

/** Centre and half sizes, mm, of the oval that clears the drawing of the unscaled head in each view. */
const rings: Record<ViewName, readonly [x: number, y: number, halfWidth: number, halfHeight: number]> = {
  front: [0, 52, 96, 92],
  left: [0, 46, 118, 98],
  right: [0, 46, 118, 98],
  back: [0, 34, 96, 112],
  top: [0, 0, 92, 116],
  turned: [0, 46, 116, 104],
  unrolled: [0, -22, 172, 150],
}

/** Where numbers stand round the head in a view, for a head scaled by `axes`. */
export function labelRing(name: ViewName, axes: Vec3): LabelRing {
  const [x, y, halfWidth, halfHeight] = rings[name]
  const grow = name === "unrolled" ? 1 : Math.max(...axes)
  return {
    centre: viewPoint(x * grow, y * grow),
    halfWidthMm: halfWidth * grow,
    halfHeightMm: halfHeight * grow,
  }
}

/** A ring drawn in to what can be seen: a page about a centre, half as wide and half as high as given; mm of the view. */
export function ringWithin(
  { centre: [x, y], ...ring }: LabelRing,
  [u, v]: ViewPoint,
  halfWidthMm: number,
  halfHeightMm: number,
): LabelRing {
  const [low, high] = [
    Math.max(y - ring.halfHeightMm, v - halfHeightMm),
    Math.min(y + ring.halfHeightMm, v + halfHeightMm),
  ]
  const [left, right] = [
    Math.max(x - ring.halfWidthMm, u - halfWidthMm),
    Math.min(x + ring.halfWidthMm, u + halfWidthMm),
  ]
  const isOffPage = high - low < ring.halfHeightMm || right - left < ring.halfWidthMm
  if (isOffPage) return { centre: viewPoint(x, y), ...ring }
  return {
    centre: viewPoint((left + right) / 2, (low + high) / 2),
    halfWidthMm: (right - left) / 2,
    halfHeightMm: (high - low) / 2,
  }
}

/** The part of a view that a page or a pane must show, mm: left, bottom, right, top. */
export function viewFrame(
  name: ViewName,
  axes: Vec3,
  hair?: Hair,
): readonly [number, number, number, number] {
  const frames: Record<ViewName, readonly [number, number, number, number]> = {
    front: [-108, -118, 108, 160],
    left: [-130, -118, 130, 160],
    right: [-130, -118, 130, 160],
    back: [-108, -118, 108, 160],
    top: [-106, -128, 106, 128],
    turned: [-130, -118, 130, 158],
    unrolled: [-190, -178, 190, 134],
  }
  const grow = name === "unrolled" ? 1 : Math.max(...axes)
  const [left, bottom, right, top] = frames[name]
  const frame = [left * grow, bottom * grow, right * grow, top * grow] as const
  return hair ? withHair(name, frame, hair) : frame
}

const hairMm = 14

/** A frame that also holds hair: its breadth, and what hangs down beside the face; what hangs lower behind leaves the page. */
function withHair(
  name: ViewName,
  [left, bottom, right, top]: readonly [number, number, number, number],
  { lengthCm }: Hair,
) {
  const lowest = 115 - 10 * Math.max(lengthCm.front, lengthCm.sides, lengthCm.back)
  const hung = name === "top" ? bottom - hairMm : Math.max(-280, Math.min(bottom, lowest))
  return [left - hairMm, hung, right + hairMm, top] as const
}
