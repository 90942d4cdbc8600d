import { viewPoint } from "../frames"
import type { Scene } from "./contourLines"
import type { Feature } from "./features"
import type { HeadLine } from "./headLine"
import { farthestAround } from "./raster"
import { runsOf, withoutShort } from "./runs"
import { seePoints } from "./seenMesh"

/** The parts of a feature that a view shows, short of the lines drawn before. */
export function featureLines(
  feature: Feature,
  { axes, view, raster }: Scene,
  isInked: (x: number, y: number) => boolean,
): HeadLine[] {
  const { x, y, depth, facing } = seePoints(feature, axes, view)
  const isSeen = Array.from(
    x,
    (_, i) => facing[i] > 0.1 && !isInked(x[i], y[i]) && farthestAround(raster, x[i], y[i]) < depth[i] + 2.5,
  )
  const isShown = withoutShort(withoutShort(isSeen, false, 4, false), true, Math.min(6, x.length / 2), false)
  return runsOf(isShown, false)
    .filter((run) => run.value)
    .map(({ from, to }) => ({
      part: feature.part,
      weight: feature.weight,
      path: Array.from({ length: to - from + 1 }, (_, i) => viewPoint(x[from + i], y[from + i])),
    }))
}
