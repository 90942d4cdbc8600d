import { type SurfacePoint, surfacePoint } from "../../../../geometry/surface/frames"
import { mapDistance } from "../../../../geometry/surface/surfacePath"
import type { Edit } from "../../document/edit"
import { replaceSections } from "../sections/replaceSections"

/**
 * Draws one point of a parting to a new place. The points beside it follow, less and less, so that the line stays
 * smooth; an end that is not itself drawn stays where it is.
 */
export const bendSection = (id: string, pointIndex: number, to: SurfacePoint): Edit =>
  replaceSections([id], (section) => ({ ...section, parting: bend(section.parting, pointIndex, to) }))

export function bend(
  parting: readonly SurfacePoint[],
  index: number,
  to: SurfacePoint,
): readonly SurfacePoint[] {
  const [u, v] = [to[0] - parting[index][0], to[1] - parting[index][1]]
  const runs = runsOf(parting)
  const last = runs.length - 1
  return parting.map(([atU, atV], i) => {
    const far = i < index ? runs[index] - runs[0] : runs[last] - runs[index]
    const share = i === index ? 1 : pull(1 - Math.abs(runs[i] - runs[index]) / far)
    return surfacePoint(atU + u * share, atV + v * share)
  })
}

/** From 0 to 1, level at both ends. */
const pull = (share: number) => (1 - Math.cos(Math.PI * share)) / 2

/** How far along the line each point is, radians of the scalp map. */
function runsOf(points: readonly SurfacePoint[]): number[] {
  const runs = [0]
  for (let i = 1; i < points.length; i++) runs.push(runs[i - 1] + mapDistance(points[i - 1], points[i]))
  return runs
}
