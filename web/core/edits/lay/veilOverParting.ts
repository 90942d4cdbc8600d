import { cleanParting, type Parted } from "../../../../geometry/parting/parting"
import { type WornParting, wornPath } from "../../../../geometry/parting/wornParting"
import { frontSide } from "../../../../geometry/scalp/frontSide"
import type { Head } from "../../../../geometry/scalp/head"
import type { Band } from "../../../../geometry/section/section"
import { surfacePoint } from "../../../../geometry/surface/frames"
import { offsetPath } from "../../../../geometry/surface/offsetPath"
import { measurePath, pointAlong, type SurfacePath } from "../../../../geometry/surface/surfacePath"
import { leftOutDepthMm, veilDepthMm, veilReachMm } from "../../../../presets/plans/startingPlan"

/** A veil astride the parting, from just inside the hairline back: the line to its left seen along it, and on which side its hair is taken. */
export function veilOverParting(head: Head, worn?: WornParting): { made: Parted; taken: Band["taken"] } {
  const parting = measurePath(head.surface, partingUnder(head, worn))
  const middle = Array.from({ length: steps + 1 }, (_, i) =>
    pointAlong(parting, leftOutDepthMm.value + (veilReachMm.value * i) / steps),
  )
  const made = cleanParting(head, offsetPath(head.surface, middle, veilDepthMm.value / 2))
  const isFrontInward = "parting" in made && frontSide(made.parting, head) === -1
  return { made, taken: isFrontInward ? "front" : "behind" }
}

/** The side parting worn, or the middle: where a zigzag runs, and where hair falls that has no parting. */
function partingUnder(head: Head, worn: WornParting | undefined): SurfacePath {
  if (worn?.kind === "side") return wornPath(head, worn)
  const front = head.hairline.pointAlong(0)
  return [front, surfacePoint(0, front[1] - 3)]
}

const steps = 20
