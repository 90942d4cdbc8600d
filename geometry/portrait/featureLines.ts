import { viewPoint } from "../surface/frames"
import type { Scene } from "./contourWeights"
import type { Feature, HeadLine } from "./headLine"
import type { LineMask } from "./lineMask"
import { farthestAround } from "./mesh/raster"
import { seePoints } from "./mesh/seenMesh"
import { runsOf, stretch, withoutShort } from "./runs"

/** The parts of a feature that a view shows, short of the lines drawn before. */
export function featureLines(feature: Feature, { axes, view, raster }: Scene, page: LineMask): HeadLine[] {
  const { x, y, depth, facing } = seePoints(feature, axes, view)
  const isSeen = Array.from(
    x,
    (_, i) =>
      facing[i] > 0.1 &&
      !page.isInked({ x: x[i], y: y[i] }) &&
      farthestAround(raster, x[i], y[i]) < depth[i] + 2.5,
  )
  const bridged = withoutShort(isSeen, { value: false, least: 4, isClosed: false })
  const least = Math.min(6, x.length / 2)
  const isShown = withoutShort(bridged, { value: true, least, isClosed: false })
  const path = Array.from(x, (_, i) => viewPoint(x[i], y[i]))
  return runsOf(isShown, false)
    .filter((run) => run.value)
    .map((run) => ({ part: feature.part, weight: feature.weight, path: stretch(path, run) }))
}
