import type { SurfacePoint } from "../../../geometry/frames"
import type { Head } from "../../../geometry/head/head"
import { freehandParting, hairlineParting, type Parted, straightParting } from "../../../geometry/parting"
import type { SectionKind } from "../../../geometry/section/section"
import { addSections } from "../../plan/edits/addSections"
import { type NextSection, newSection } from "../../plan/newSection"
import type { PartingWay } from "../../plan/sessionStore"
import { kindWords } from "../../plan/words"
import type { Tool } from "./tool"

/** The points the hand has passed on the scalp, first to last. */
export type Stroke = readonly SurfacePoint[]

/** Draws a section of a kind along a parting; the way says how the hand's points become the parting. */
export const drawTool = (kind: SectionKind, way: PartingWay, next: NextSection): Tool<Stroke> => ({
  start: ({ at }) => (at ? [at] : null),
  move: (stroke, { at }) => (at ? extend(way, stroke, at) : stroke),
  finish(stroke, { plan, head }) {
    const made = partings[way](head, stroke, next.depthMm[kind])
    if ("refused" in made) return { refused: refusalWords[made.refused] }
    return {
      label: `Draw a ${kindWords[kind].toLowerCase()}${kind === "left-out" ? " band" : ""}`,
      edit: (open) => addSections(newSection(kind, made.parting, plan, next))(open),
    }
  },
})

export const extend = (way: PartingWay, stroke: Stroke, at: SurfacePoint): Stroke =>
  way === "freehand" ? [...stroke, at] : [stroke[0], at]

type Make = (head: Head, stroke: Stroke, depthMm: number) => Parted

const partings: Record<PartingWay, Make> = {
  straight: (head, stroke) => straightParting(head, stroke[0], stroke[stroke.length - 1]),
  freehand: (head, stroke) => freehandParting(head, stroke),
  hairline: (head, stroke, depthMm) => alongHairline(head, stroke, depthMm),
}

/** The parting keeps the distance at which the hand came down, but leaves room for the hair in front of it. */
function alongHairline(head: Head, stroke: Stroke, depthMm: number): Parted {
  const from = head.hairline.coordinates(stroke[0])
  const to = head.hairline.coordinates(stroke[stroke.length - 1])
  const behindMm = Math.max(Math.round(from.behindMm), Math.ceil(depthMm))
  return hairlineParting(head, { fromAlongMm: from.alongMm, toAlongMm: to.alongMm, behindMm })
}

export const refusalWords = {
  "too-short": "Too short to part: draw a longer line.",
  "outside-hairline": "No hair grows there: draw inside the hairline.",
  "crosses-itself": "A parting cannot cross itself: draw it again.",
} as const
