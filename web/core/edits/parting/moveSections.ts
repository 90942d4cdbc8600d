import { frontSide } from "../../../../geometry/scalp/frontSide"
import type { Head } from "../../../../geometry/scalp/head"
import { type SurfacePoint, surfacePoint } from "../../../../geometry/surface/frames"
import { offsetPath } from "../../../../geometry/surface/offsetPath"
import type { SurfacePath } from "../../../../geometry/surface/surfacePath"
import { headingLeft, walk } from "../../../../geometry/surface/surfaceWalk"
import type { Edit } from "../../document/edit"
import { headOf } from "../../figures/measured"
import { replaceSections } from "../sections/replaceSections"
import { turnBetween } from "./dragSections"

/** A small move over the scalp, mm: along the hairline to the head's right, and away from the face. */
export type Step = { alongMm: number; behindMm: number }

/** Moves sections over the scalp. A parting keeps its shape; near the hairline it keeps its distance from it. */
export const moveSections =
  (ids: readonly string[], { alongMm, behindMm }: Step): Edit =>
  (plan) => {
    const head = headOf(plan)
    const move = (parting: SurfacePath) => movedBack(head, movedAlong(head, parting, alongMm), behindMm)
    return replaceSections(ids, (section) => ({ ...section, parting: move(section.parting) }))(plan)
  }

/** A parting moved away from the face by so many mm, its shape kept. */
export const movedBack = (head: Head, parting: SurfacePath, mm: number) =>
  mm === 0 ? parting : offsetPath(head.surface, parting, -frontSide(parting, head) * mm)

/** Farther in than this, mm, the nearest place of the hairline changes too fast to be a guide. */
const guidedMm = 60

/** A parting moved along the hairline to the head's right by so many mm, its distance from it kept where it lies near. */
export function movedAlong(head: Head, parting: SurfacePath, mm: number): SurfacePath {
  if (mm === 0) return parting
  const guided = parting.every((at) => head.hairline.coordinates(at).behindMm < guidedMm)
  if (guided) return parting.map((at) => alongHairline(head, at, mm))
  const middle = parting[parting.length >> 1]
  return parting.map(turnBetween(middle, alongHairline(head, middle, mm)))
}

/** The same distance behind the hairline, so far along it. */
function alongHairline(head: Head, at: SurfacePoint, mm: number): SurfacePoint {
  const { alongMm, behindMm } = head.hairline.coordinates(at)
  const [from, to] = [alongMm, alongMm + mm].map((placeMm) => behindHairline(head, placeMm, behindMm))
  // Only the difference is used, so that a step and the step back meet.
  return surfacePoint(at[0] + to[0] - from[0], at[1] + to[1] - from[1])
}

function behindHairline({ surface, hairline }: Head, alongMm: number, behindMm: number): SurfacePoint {
  const [before, at, after] = [-1, 0, 1].map((mm) => hairline.pointAlong(alongMm + mm))
  const outward = headingLeft(surface, at, after[0] - before[0], after[1] - before[1])
  return walk(surface, { at, heading: outward }, -behindMm).at
}
