import {
  freehandParting,
  hairlineParting,
  type Parted,
  straightParting,
} from "../../../geometry/parting/parting"
import { type Snapped, snapStroke } from "../../../geometry/placing/snap"
import { type SnapGuide, snapGuides } from "../../../geometry/placing/snapGuides"
import type { Head } from "../../../geometry/scalp/head"
import type { SectionKind } from "../../../geometry/section/section"
import type { SurfacePoint } from "../../../geometry/surface/frames"
import { refuse } from "../../core/document/edit"
import { newSection } from "../../core/document/newSection"
import { addSections } from "../../core/edits/sections/addSections"
import type { PartingWay } from "../../core/placement/tools"
import type { Hint } from "../../session/draftStore"
import type { Session } from "../../session/sessionStore"
import type { Situation, Tool } from "./tool"

/** The points the hand has passed on the scalp, first to last. */
export type Stroke = readonly SurfacePoint[]

/** A stroke, and what it may snap to: nothing when it is held off. */
type Drawing = { points: Stroke; guides: readonly SnapGuide[]; isFree: boolean }

/** What of the session a stroke is drawn by. */
export type Drawn = Pick<Session, "way" | "next" | "snaps" | "gapMm">

/** Draws a section of a kind along a parting; the way says how the hand's points become the parting. */
export const drawTool = (kind: SectionKind, drawn: Drawn): Tool<Drawing> => ({
  start: ({ at, alt }, situation) =>
    at && { points: [at], guides: guidesFor(kind, drawn, situation), isFree: alt },
  move: (stroke, { at, alt }) => ({
    ...stroke,
    points: at ? extend(drawn.way, stroke.points, at) : stroke.points,
    isFree: alt,
  }),
  finish(stroke, { head }) {
    const depthMm = drawn.next.depthMm[kind]
    const snapped = drawn.way === "hairline" ? null : snap(stroke, head, drawn, depthMm)
    const made = snapped ?? partings[drawn.way](head, stroke.points, depthMm)
    if ("refused" in made) return refuse({ code: made.refused })
    return {
      label: { chapter: "placement", code: "draw-section", kind },
      edit: (open) => addSections(newSection(kind, made.parting, open, drawn.next))(open),
      ...(snapped && { hint: hintOf(snapped, drawn) }),
    }
  },
})

export const extend = (way: PartingWay, stroke: Stroke, at: SurfacePoint): Stroke =>
  way === "freehand" ? [...stroke, at] : [stroke[0], at]

/** The last section, and the one before it: its twin when it has just been mirrored. */
const lastFew = 2

/** The lines beside the sections that were made last. */
function guidesFor(
  kind: SectionKind,
  { way, snaps, next, gapMm }: Drawn,
  { plan, head }: Situation,
): SnapGuide[] {
  if (!snaps || way === "hairline") return []
  const beside = { taken: next.taken, depthMm: next.depthMm[kind], gapMm }
  return plan.sections
    .slice(-lastFew)
    .toReversed()
    .flatMap((last) => snapGuides(head, last, beside))
}

function snap(
  { points, guides, isFree }: Drawing,
  head: Head,
  { snaps, next }: Drawn,
  depthMm: number,
): Snapped | null {
  if (!snaps || isFree) return null
  return snapStroke(points, { head, guides, leastBehindMm: next.taken === "front" ? Math.ceil(depthMm) : 1 })
}

const hintOf = ({ to, guide }: Snapped, { gapMm }: Drawn): Hint => ({ to, gapMm, guide })

type Make = (head: Head, points: Stroke, depthMm: number) => Parted

const partings: Record<PartingWay, Make> = {
  straight: (head, points) => straightParting(head, points[0], points[points.length - 1]),
  freehand: (head, points) => freehandParting(head, points),
  hairline: (head, points, depthMm) => alongHairline(head, points, depthMm),
}

/** The parting keeps the distance at which the hand came down, but leaves room for the hair in front of it. */
function alongHairline(head: Head, points: Stroke, depthMm: number): Parted {
  const from = head.hairline.coordinates(points[0])
  const to = head.hairline.coordinates(points[points.length - 1])
  const behindMm = Math.max(Math.round(from.behindMm), Math.ceil(depthMm))
  return hairlineParting(head, { fromAlongMm: from.alongMm, toAlongMm: to.alongMm, behindMm })
}
