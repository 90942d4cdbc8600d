import { surfacePoint } from "../../../geometry/frames"
import { frontSide } from "../../../geometry/frontSide"
import type { Head } from "../../../geometry/head/head"
import { offsetPath } from "../../../geometry/offsetPath"
import { cleanParting, type Parted } from "../../../geometry/parting"
import type { Band } from "../../../geometry/section/section"
import { measurePath, pointAlong } from "../../../geometry/surfacePath"
import { leftOutDepthMm, veilDepthMm, veilReachMm } from "../../../presets/startingPlan"

/** A veil astride the centre parting, from just inside the hairline back: the line to its left seen along it, and on which side its hair is taken. */
export function veilOverParting(head: Head): { made: Parted; taken: Band["taken"] } {
  const front = head.hairline.pointAlong(0)
  const midline = measurePath(head.surface, [front, surfacePoint(0, front[1] - 3)])
  const middle = Array.from({ length: steps + 1 }, (_, i) =>
    pointAlong(midline, leftOutDepthMm.value + (veilReachMm.value * i) / steps),
  )
  const made = cleanParting(head, offsetPath(head.surface, middle, veilDepthMm.value / 2))
  const isFrontInward = "parting" in made && frontSide(made.parting, head) === -1
  return { made, taken: isFrontInward ? "front" : "behind" }
}

const steps = 20
