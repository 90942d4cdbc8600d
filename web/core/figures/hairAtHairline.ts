import type { Head } from "../../../geometry/scalp/head"
import { bandShape } from "../../../geometry/section/bandShape"
import type { Section } from "../../../geometry/section/section"
import { headPoint } from "../../../geometry/surface/frames"
import { hairlineHairMm } from "../../../presets/client/hairlines"
import { remembered } from "../memory/remembered"

/** Whether any hair of a section grows near the hairline, wherever its parting lies; remembered while both live. */
export const takesAtHairline = remembered(
  (section: Section, head: Head): boolean => leastBehindMm(section, head) <= hairlineHairMm.value,
)

/** How near the hairline hair is taken, mm along the scalp: the nearer long edge of the band rules. */
export function leastBehindMm(section: Section, head: Head): number {
  const { stations, layers, points } = bandShape(section, head)
  let least = Number.POSITIVE_INFINITY
  for (let station = 0; station < stations; station++)
    for (const layer of [0, layers - 1]) {
      const i = 3 * (station * layers + layer)
      const at = head.surface.toSurface(headPoint(points[i], points[i + 1], points[i + 2]))
      least = Math.min(least, head.hairline.coordinates(at).behindMm)
    }
  return least
}
