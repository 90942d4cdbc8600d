import type { Head } from "../../../../geometry/scalp/head"
import { longestRunInside } from "../../../../geometry/scalp/longestRunInside"
import type { SurfacePoint } from "../../../../geometry/surface/frames"
import { mapDistance, type SurfacePath } from "../../../../geometry/surface/surfacePath"
import { walk } from "../../../../geometry/surface/surfaceWalk"
import { normalize } from "../../../../geometry/surface/vec3"
import { validateDividers } from "../../checks/validateDividers"
import type { Edit } from "../../document/edit"
import type { Plan } from "../../document/schema"
import { headOf } from "../../figures/measured"
import { dividingOf, divisionOf } from "../../figures/workingSections"
import { bend } from "../parting/bendSection"
import { turnBetween } from "../parting/dragSections"

/** Turns a dividing parting about the head's centre so that the place first touched comes under the place touched now. */
export const dragWorkingParting = (id: string, from: SurfacePoint, to: SurfacePoint): Edit =>
  changeParting(id, (parting) => parting.map(turnBetween(from, to)))

/** Draws one point of a dividing parting to a new place; the points beside it follow. */
export const bendWorkingParting = (id: string, pointIndex: number, to: SurfacePoint): Edit =>
  changeParting(id, (parting) => bend(parting, pointIndex, to))

/** A small move over the scalp at the middle of the line, mm: to the head's right, and toward the face. */
export type WorkingStep = { rightMm: number; forwardMm: number }

export const nudgeWorkingParting =
  (id: string, { rightMm, forwardMm }: WorkingStep): Edit =>
  (plan) => {
    const { surface } = headOf(plan)
    return changeParting(id, (parting) => {
      const from = parting[parting.length >> 1]
      const [right, forward] = surface.tangentsAt(from)
      const sideways = walk(surface, { at: from, heading: normalize(right) }, rightMm).at
      const to = walk(surface, { at: sideways, heading: normalize(forward) }, forwardMm).at
      return parting.map(turnBetween(from, to))
    })(plan)
  }

function changeParting(id: string, change: (parting: SurfacePath) => SurfacePath): Edit {
  return (plan) => {
    const head = headOf(plan)
    const { dividers } = dividingOf(plan)
    const index = dividers.findIndex((each) => each.id === id)
    if (index < 0) return plan
    const reaching = reachingEdges(dividers[index].parting, index, plan)
    const parting = insideHair(head, change(reaching))
    return validateDividers(plan, dividers.with(index, { id, parting }))
  }
}

/** Points nearer than this, radians, are one. */
const samePlace = 0.02

/** The parting with its ends where its line meets the edges, so that a move does not use up the reach of its ends. */
function reachingEdges(parting: SurfacePath, index: number, plan: Plan): SurfacePath {
  const { path } = divisionOf(plan).dividers[index]
  if (path.length === 0) return parting
  const [start, end] = [path[0], path[path.length - 1]]
  const isApart = (at: SurfacePoint, other: SurfacePoint) => mapDistance(at, other) >= samePlace
  return [
    ...(isApart(start, parting[0]) ? [start] : []),
    ...parting,
    ...(isApart(end, parting[parting.length - 1]) ? [end] : []),
  ]
}

/** What of a moved line still lies in the hair, its points kept. */
function insideHair({ hairline }: Head, parting: SurfacePath): SurfacePath {
  if (parting.every(hairline.contains)) return parting
  const run = longestRunInside(hairline, parting)
  return run.length > 1 ? run : parting
}
