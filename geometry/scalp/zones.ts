import { type SurfacePoint, surfacePoint } from "../surface/frames"
import { areaElement } from "../surface/surfacePatch"
import type { Head } from "./head"
import { mapReach } from "./headSurface"

/** The four regions of the scalp of the SALT score (Olsen 2004); left and right are the head's own. */
export const zones = ["top", "left", "right", "back"] as const
export type Zone = (typeof zones)[number]

/**
 * The planes that part the zones, mm on the unscaled head: the top lies above one, the back below it and behind the
 * other. The score's drawing gives no planes; these give its shares (assumption).
 */
export const zonePlanes = { topZ: 82.7, backY: -65 }

/** The zone of a place on the scalp. The midline of a side belongs to the head's right. */
export function zoneAt(head: Head, at: SurfacePoint): Zone {
  const [x, y, z] = head.surface.pointAt(at)
  if (z / head.axes[2] > zonePlanes.topZ) return "top"
  if (y / head.axes[1] < zonePlanes.backY) return "back"
  return x < 0 ? "left" : "right"
}

/** Whether a place lies in the face frame: inside the hairline and within so many mm of where it borders the face. */
export function inFaceFrame({ hairline }: Head, at: SurfacePoint, widthMm: number): boolean {
  const { alongMm, behindMm } = hairline.coordinates(at)
  const { left, right } = hairline.sides
  const bordersFace = alongMm >= -left.faceReachMm && alongMm <= right.faceReachMm
  return behindMm >= 0 && behindMm <= widthMm && bordersFace
}

/** The area of each zone inside the hairline, cm2, summed over cells of `step` radians of the scalp map. */
export function zoneAreas(head: Head, step = 0.02): Record<Zone, number> {
  const areas = { top: 0, left: 0, right: 0, back: 0 }
  for (let u = -mapReach + step / 2; u < mapReach; u += step)
    for (let v = -mapReach + step / 2; v < mapReach; v += step) {
      const at = surfacePoint(u, v)
      if (head.hairline.contains(at))
        areas[zoneAt(head, at)] += (step * step * areaElement(head.surface, at)) / 100
    }
  return areas
}
