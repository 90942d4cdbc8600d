import type { LandmarkName } from "../../../geometry/scalp/hairlineLandmarks"
import type { Head } from "../../../geometry/scalp/head"
import { nearestLandmark } from "../../../geometry/scalp/nearestLandmark"
import { type FoilLie, isFoil, type Section, type SectionKind } from "../../../geometry/section/section"
import type { SurfacePoint } from "../../../geometry/surface/frames"
import { twinOf } from "../document/pairs"
import type { Plan } from "../document/schema"
import { directionIn, sideOf } from "../placement/places"

/** The trade's words for what is drawn. */

export const kindWords: Record<SectionKind, string> = {
  slice: "Slice",
  weave: "Weave",
  backcomb: "Backcomb",
  "left-out": "Left out",
}

export const lieWords: Record<FoilLie, string> = {
  down: "hangs down",
  up: "laid up",
  "toward-face": "toward the face",
  "away-from-face": "away from the face",
}

const besideHairlineMm = 45

/** Where a section lies: the nearest landmark of the hairline, or how far behind it. */
export function placeOf(section: Section, head: Head): string {
  const { alongMm, behindMm } = head.hairline.coordinates(middleOf(section))
  return behindMm > besideHairlineMm
    ? `${Math.round(behindMm)} mm behind the hairline`
    : landmarkAt(head, alongMm)
}

const middleOf = ({ parting }: Section) => parting[parting.length >> 1]

/** The landmark of the hairline nearest to a place so far along it. */
const landmarkAt = ({ hairline }: Head, alongMm: number): LandmarkName =>
  nearestLandmark(hairline, alongMm).name

/** Side and place, such as "left temple" or "centre front". */
export function whereOf(section: Section, head: Head): string {
  const place = placeOf(section, head)
  const side = sideOf(section)
  return side === "centre" || place.startsWith("centre") ? place : `${side} ${place}`
}

/** Which section a section makes a pair with, and where that lies. */
export function pairWords(section: Section, plan: Plan): string | null {
  const twin = twinOf(section, plan)
  if (!twin) return null
  const side = sideOf(twin)
  const name = isFoil(twin) ? String(twin.mapNumber) : twin.name || "its twin"
  return `pair with ${name}${side === "centre" ? "" : ` on the client’s ${side}`}`
}

/** Side and landmark nearest to a place so far along the hairline, such as "left temple". */
export function landmarkWords(alongMm: number, head: Head): string {
  const landmark = landmarkAt(head, alongMm)
  if (landmark.startsWith("centre")) return landmark
  return `${alongMm < 0 ? "left" : "right"} ${landmark}`
}

/** A place told by the hairline: how far behind it and near which landmark, then how far along it from centre front. */
export function hairlineWords(at: SurfacePoint, head: Head): readonly [behind: string, along: string] {
  const { alongMm, behindMm } = head.hairline.coordinates(at)
  const landmark = landmarkWords(alongMm, head)
  const mm = Math.round(Math.abs(behindMm))
  const behind = behindMm < 0 ? "in front of" : "behind"
  return [
    mm === 0 ? `on the hairline, ${landmark}` : `${mm} mm ${behind} the hairline, ${landmark}`,
    `${Math.round(Math.abs(alongMm))} mm along from centre front`,
  ]
}

/** The trade's word and the angle, such as "diagonal back 38°"; what follows the hairline has no one angle. */
export function directionText(section: Pick<Section, "parting">, head: Head): string {
  const { name, degrees } = directionIn(section, head)
  return name === "parallel to hairline" ? name : `${name} ${Math.round(degrees)}°`
}
