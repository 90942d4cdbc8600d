import { directionOf } from "../../geometry/direction"
import type { Head } from "../../geometry/head/head"
import { type FoilLie, isFoil, type Section, type SectionKind } from "../../geometry/section/section"
import { twinOf } from "./pairs"
import type { Plan } from "./schema"

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

export type Side = "left" | "right" | "centre"

/** The client's side that a section lies on: centre when its parting crosses the middle evenly. */
export function sideOf({ parting }: Section): Side {
  const mean = parting.reduce((sum, [u]) => sum + u, 0) / parting.length
  const most = Math.max(...parting.map(([u]) => Math.abs(u)))
  if (Math.abs(mean) <= most * 0.15) return "centre"
  return mean > 0 ? "right" : "left"
}

const besideHairlineMm = 45

/** Where a section lies: the nearest landmark of the hairline, or how far behind it. */
export function placeOf(section: Section, head: Head): string {
  const middle = section.parting[section.parting.length >> 1]
  const { alongMm, behindMm } = head.hairline.coordinates(middle)
  if (behindMm > besideHairlineMm) return `${Math.round(behindMm)} mm behind the hairline`
  let nearest = { name: "hairline", apart: Infinity }
  for (const [name, at] of head.hairline.landmarks) {
    const apart = Math.abs(head.hairline.coordinates(at).alongMm - Math.abs(alongMm))
    if (apart < nearest.apart) nearest = { name, apart }
  }
  return nearest.name
}

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

export const directionWords = (section: Section, head: Head) =>
  directionOf(section.parting, head.surface, head.hairline).name
