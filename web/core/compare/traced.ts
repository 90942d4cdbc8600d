import type { Head } from "../../../geometry/scalp/head"
import type { Section } from "../../../geometry/section/section"
import { normalAt } from "../../../geometry/surface/surface"
import { measurePath, resampleMeasured } from "../../../geometry/surface/surfacePath"
import { distance, dot, scale, subtract, type Vec3 } from "../../../geometry/surface/vec3"
import { remembered } from "../memory/remembered"

/** What a section is compared by: places along its parting, from its first point to its last, lengths mm, angles degrees. */
export type Traced = {
  section: Section
  places: readonly Vec3[]
  /** The mean way to the hairline. */
  behindMm: number
  /** Of the hairline, how far along lies the place nearest to its middle; positive to the head's right. */
  alongMm: number
  lengthMm: number
  /** The outward direction at its middle. */
  normal: Vec3
}

const count = 9
export const middle = count >> 1

/** A section measured on a head, remembered for as long as both live. */
export const tracedOn = remembered(({ surface, hairline }: Head, section: Section): Traced => {
  const measured = measurePath(surface, section.parting)
  const points = resampleMeasured(measured, count)
  const told = points.map(hairline.coordinates)
  return {
    section,
    places: points.map(surface.pointAt),
    behindMm: told.reduce((sum, { behindMm }) => sum + behindMm, 0) / count,
    alongMm: told[middle].alongMm,
    lengthMm: measured.lengthMm,
    normal: normalAt(surface, points[middle]),
  }
})

/** How far two partings lie apart, mm: the mean over places along them, whichever end is first. */
export function apart(one: Traced, other: Traced): { apartMm: number; isTurned: boolean } {
  let [straight, turned] = [0, 0]
  for (let i = 0; i < count; i++) {
    straight += distance(one.places[i], other.places[i])
    turned += distance(one.places[i], other.places[count - 1 - i])
  }
  return { apartMm: Math.min(straight, turned) / count, isTurned: turned < straight }
}

/** The angle between the lines from end to end of two partings, degrees 0 to 90, on the scalp under the first. */
export function angleBetween(one: Traced, other: Traced): number {
  const [a, b] = [one, other].map(({ places }) => {
    const chord = subtract(places[count - 1], places[0])
    return subtract(chord, scale(one.normal, dot(chord, one.normal)))
  })
  const lengths = Math.sqrt(dot(a, a) * dot(b, b))
  if (lengths === 0) return 0
  return (Math.acos(Math.min(1, Math.abs(dot(a, b)) / lengths)) * 180) / Math.PI
}
