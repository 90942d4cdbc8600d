import type { SurfacePoint, ViewPoint } from "../../../geometry/surface/frames"
import { bendSection } from "../../core/edits/parting/bendSection"
import { dragSections } from "../../core/edits/parting/dragSections"
import { thickenSections } from "../../core/edits/sections/thickenSections"
import { handlesOf } from "../paint/handles"
import { sectionAt } from "../paint/hitTest"
import type { Finished, Pointer, Situation, Tool } from "./tool"

/** What the hand has taken hold of, where it took hold, and where it is now. */
export type Hold =
  | {
      kind: "section"
      id: string
      ids: readonly string[]
      from: SurfacePoint
      to: SurfacePoint
      movedMm: number
      /** The selection a touch leaves: this section alone, or taken into it or out of it. */
      select: readonly string[]
    }
  | { kind: "bend"; id: string; pointIndex: number; to: SurfacePoint | null }
  | { kind: "depth"; id: string; from: ViewPoint; outward: ViewPoint; byMm: number }

/** A hand that moves less than this only selects, mm of the page. */
const restMm = 1.5

/** Selects what is touched, moves it, bends it by its handles, makes it deeper. Nothing under the hand: no gesture. */
export const selectTool: Tool<Hold> = {
  start: (pointer, situation) => takeHandle(pointer, situation) ?? takeSection(pointer, situation),
  move(hold, pointer, { head }) {
    if (hold.kind === "depth") return { ...hold, byMm: reachMm(hold, pointer.page) }
    if (!pointer.at) return hold
    if (hold.kind === "bend") return { ...hold, to: pointer.at }
    const [from, to] = [head.surface.pointAt(hold.from), head.surface.pointAt(pointer.at)]
    const movedMm = Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2])
    return { ...hold, to: pointer.at, movedMm: Math.max(hold.movedMm, movedMm) }
  },
  finish(hold): Finished {
    switch (hold.kind) {
      case "section":
        return hold.movedMm < restMm
          ? { select: hold.select }
          : {
              label: { chapter: "placement", code: "move" },
              edit: dragSections(hold.ids, hold.from, hold.to),
              select: hold.ids,
            }
      case "bend":
        return hold.to
          ? {
              label: { chapter: "placement", code: "bend" },
              edit: bendSection(hold.id, hold.pointIndex, hold.to),
            }
          : { select: [hold.id] }
      case "depth":
        return hold.byMm === 0
          ? { select: [hold.id] }
          : {
              label: { chapter: "placement", code: "set-depth" },
              edit: thickenSections([hold.id], hold.byMm),
            }
    }
  },
}

/** How far the depth handle was drawn outward, to half a millimetre. */
function reachMm({ from, outward }: Extract<Hold, { kind: "depth" }>, [x, y]: ViewPoint) {
  return Math.round(2 * ((x - from[0]) * outward[0] + (y - from[1]) * outward[1])) / 2
}

function takeHandle(pointer: Pointer, { plan, selectedIds }: Situation): Hold | null {
  const section =
    selectedIds.length === 1 && !pointer.adds && plan.sections.find(({ id }) => id === selectedIds[0])
  if (!section) return null
  const apart = ([x, y]: ViewPoint) => Math.hypot(x - pointer.page[0], y - pointer.page[1])
  const [nearest] = handlesOf(section, plan, pointer.scene).toSorted((a, b) => apart(a.at) - apart(b.at))
  if (!nearest || apart(nearest.at) > pointer.reachMm) return null
  return nearest.kind === "bend"
    ? { kind: "bend", id: section.id, pointIndex: nearest.pointIndex, to: null }
    : { kind: "depth", id: section.id, from: pointer.page, outward: nearest.outward, byMm: 0 }
}

function takeSection(
  { at, page, scene, reachMm, adds }: Pointer,
  { plan, selectedIds }: Situation,
): Hold | null {
  const id = sectionAt(plan, scene, page, reachMm)
  if (id === null || !at) return null
  return {
    kind: "section",
    id,
    // The one touched leads, and its twin follows as its mirror image.
    ids: selectedIds.includes(id) ? [id, ...selectedIds.filter((other) => other !== id)] : [id],
    from: at,
    to: at,
    movedMm: 0,
    select: adds ? toggled(selectedIds, id) : [id],
  }
}

const toggled = (ids: readonly string[], id: string) =>
  ids.includes(id) ? ids.filter((other) => other !== id) : [...ids, id]
