import { crossingShare, piecesBeside } from "../../../../geometry/parting/besideParting"
import { wornPath } from "../../../../geometry/parting/wornParting"
import { alongMm, type HairlinePlace, type TechniqueParting } from "../../../../geometry/placing/technique"
import type { Section } from "../../../../geometry/section/section"
import { extendPath } from "../../../../geometry/surface/extendPath"
import type { SurfacePath } from "../../../../geometry/surface/surfacePath"
import { besideWornMm, shortestStackedMm } from "../../../../presets/placement/stacking"
import type { Plan } from "../../document/schema"
import { headOf } from "../../figures/measured"

/**
 * What is laid follows the side parting that a client wears: nothing is taken across it. Where the hair is parted in the
 * middle, in a zigzag or not at all, or nobody has said, everything lies where it is told.
 */

/** A little past the hairline, mm, so that a parting along the edge meets it too. */
const pastEdgeMm = 10

/** The side parting worn, from before the hairline back to the crown; null where none is worn. */
function sideParting(plan: Plan): SurfacePath | null {
  const worn = plan.head.wornParting
  if (worn?.kind !== "side") return null
  const head = headOf(plan)
  const path = wornPath(head, worn)
  return path.length < 2 ? null : extendPath(head.surface, path, pastEdgeMm, 0)
}

/** The pieces of a parting that lie on one side of the hair each; the parting itself where nothing is crossed. */
export function piecesOnSides(parting: SurfacePath, plan: Plan): readonly SurfacePath[] {
  const line = sideParting(plan)
  if (!line) return [parting]
  const room = { clearMm: besideWornMm.value, leastMm: shortestStackedMm.value }
  return piecesBeside(headOf(plan).surface, parting, line, room)
}

/** The piece of a parting on the side that a section lies on; null where there is none. What itself lies across goes on as it lies. */
export function pieceBeside(parting: SurfacePath, section: Section, plan: Plan): SurfacePath | null {
  const line = sideParting(plan)
  if (!line || crossingShare(section.parting, line) !== null) return parting
  const from = middleOf(section.parting)
  const isSameSide = (piece: SurfacePath) => crossingShare([from, middleOf(piece)], line) === null
  return piecesOnSides(parting, plan).find(isSameSide) ?? null
}

const middleOf = (path: SurfacePath) => path[path.length >> 1]

/** The farthest that the parting may lie from centre front, as a share of the way to the recession. */
const farthestShare = 0.8

/**
 * A parting of a technique, told from centre front, as it is told from the side parting worn: between the recessions its
 * places move over so that what was in the middle lies at the parting. One side becomes longer than the other, on purpose.
 */
export function fromWornParting(parting: TechniqueParting, plan: Plan): TechniqueParting {
  const worn = plan.head.wornParting
  if (worn?.kind !== "side" || parting.run === "through") return parting
  const side = worn.side === "left" ? -1 : 1
  const share = Math.min(farthestShare, worn.offCentreMm / Math.abs(alongMm(headOf(plan), side)))
  const moved = (place: HairlinePlace): HairlinePlace => ({
    ...place,
    landmark: movedOver(place.landmark, side * share),
  })
  return { ...parting, from: moved(parting.from), to: moved(parting.to) }
}

/** Between the recessions the landmarks are drawn out on one side and together on the other; those beyond stay. */
function movedOver(landmark: number, foot: number): number {
  if (Math.abs(landmark) >= 1) return landmark
  return landmark >= 0 ? foot + landmark * (1 - foot) : foot + landmark * (1 + foot)
}
