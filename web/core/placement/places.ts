import { type Direction, directionOf } from "../../../geometry/parting/direction"
import type { LandmarkName } from "../../../geometry/scalp/hairlineLandmarks"
import type { Head } from "../../../geometry/scalp/head"
import { nearestLandmark } from "../../../geometry/scalp/nearestLandmark"
import type { Section } from "../../../geometry/section/section"
import type { SurfacePoint } from "../../../geometry/surface/frames"
import { remembered } from "../memory/remembered"

/** Where things lie on a head, told in codes by the client's own sides and the landmarks of the hairline. */

export type Side = "left" | "right" | "centre"

/** A landmark of the hairline on one side; of the centre where it lies in the middle, or is meant on no side. */
export type LandmarkCode = { landmark: LandmarkName; side: Side }

/** Where a section lies: at a landmark of the hairline, or so far behind it, whole mm on the scalp. */
export type PlaceCode =
  | ({ code: "at-landmark" } & LandmarkCode)
  | { code: "behind-hairline"; behindMm: number; side: Side }

/** A point told by the hairline: how far behind it (in front where negative), near which landmark, how far from centre front; mm. */
export type HairlinePointCode = LandmarkCode & { behindMm: number; alongMm: number }

/** The client's side that a section lies on: centre when its parting crosses the middle evenly. */
export function sideOf({ parting }: Pick<Section, "parting">): Side {
  const mean = parting.reduce((sum, [u]) => sum + u, 0) / parting.length
  const most = Math.max(...parting.map(([u]) => Math.abs(u)))
  if (Math.abs(mean) <= most * 0.15) return "centre"
  return mean > 0 ? "right" : "left"
}

const besideHairlineMm = 45

/** Where a section lies: the nearest landmark of the hairline, or how far behind it. */
export function placeOf(section: Pick<Section, "parting">, head: Head): PlaceCode {
  const { alongMm, behindMm } = head.hairline.coordinates(section.parting[section.parting.length >> 1])
  const side = sideOf(section)
  if (behindMm > besideHairlineMm) return { code: "behind-hairline", behindMm: Math.round(behindMm), side }
  const { name } = nearestLandmark(head.hairline, alongMm)
  return { code: "at-landmark", landmark: name, side: isMiddle(name) ? "centre" : side }
}

const isMiddle = (name: LandmarkName) => name === "centre front" || name === "centre nape"

/** The landmark nearest to a place so far along the hairline. */
export function landmarkAt(alongMm: number, { hairline }: Head): LandmarkCode {
  const { name } = nearestLandmark(hairline, alongMm)
  return { landmark: name, side: isMiddle(name) ? "centre" : alongMm < 0 ? "left" : "right" }
}

/** A place told by the hairline. */
export function hairlinePointOf(at: SurfacePoint, head: Head): HairlinePointCode {
  const { alongMm, behindMm } = head.hairline.coordinates(at)
  return {
    ...landmarkAt(alongMm, head),
    behindMm: Math.round(behindMm),
    alongMm: Math.round(Math.abs(alongMm)),
  }
}

/** How a parting runs, remembered for as long as it and the head live. */
export const directionIn = ({ parting }: Pick<Section, "parting">, head: Head): Direction =>
  directionOn(head, parting)

const directionOn = remembered(({ surface, hairline }: Head, parting: Section["parting"]) =>
  directionOf(parting, surface, hairline),
)
