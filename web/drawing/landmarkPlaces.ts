import { type HeadSide, headSides } from "../../geometry/scalp/hairline"
import { type LandmarkName, landmarkNames } from "../../geometry/scalp/hairlineLandmarks"
import { isOnMidline } from "../../geometry/scalp/landmarkMoves"
import type { SidedLandmark } from "../../geometry/scalp/nearestLandmark"
import type { SurfacePoint, ViewPoint } from "../../geometry/surface/frames"
import { normalAt } from "../../geometry/surface/surface"
import { walk } from "../../geometry/surface/surfaceWalk"
import { add, dot, normalize, scale, subtract, type Vec3 } from "../../geometry/surface/vec3"
import { facing, toView } from "../../geometry/surface/views"
import type { Scene } from "./marks"

export type LandmarkPlace = SidedLandmark & { at: SurfacePoint; page: ViewPoint }

/** The landmarks that a page shows and where, and the one in a hand wherever it is; those of the middle once, as the right's. */
export function landmarksSeen(scene: Scene, inHand: SidedLandmark | null = null): LandmarkPlace[] {
  const isHeld = (name: LandmarkName, side: HeadSide) =>
    inHand?.name === name && (inHand.side === side || isOnMidline(name))
  return headSides.flatMap((side) =>
    landmarkNames.flatMap((name) => {
      const at = scene.head.hairline.sides[side].landmarks.get(name)
      const isTwin = side === "left" && isOnMidline(name)
      return at && !isTwin && (isHeld(name, side) || isInReach(at, scene))
        ? [{ name, side, at, page: toView(scene.view, scene.head.surface, at) }]
        : []
    }),
  )
}

/** What lies so far over a landmark, mm, is in sight: the ear, or the rim of the drawing, does not keep a hand off. */
const overRimMm = 8

/** Whether a page shows a place well enough to take hold of it; the middle is on the rim from the side. */
export function isInReach(at: SurfacePoint, { view, head: { surface }, hides }: Scene) {
  const isFacing = facing(view, surface, at) > -1e-3
  return isFacing && !hides(add(surface.pointAt(at), scale(normalAt(surface, at), overRimMm)))
}

/** The place so many mm over the scalp from another, toward the right or the top of the page. */
export function nudged(at: SurfacePoint, { head, view }: Scene, [right, up]: readonly [number, number]) {
  const mm = Math.hypot(right, up)
  const [tangentU, tangentV] = head.surface.tangentsAt(at)
  const way: Vec3 =
    view.kind === "unrolled"
      ? add(scale(tangentU, right), scale(tangentV, up))
      : add(scale(view.right, right), scale(view.up, up))
  const normal = normalAt(head.surface, at)
  return walk(head.surface, { at, heading: normalize(subtract(way, scale(normal, dot(way, normal)))) }, mm).at
}
