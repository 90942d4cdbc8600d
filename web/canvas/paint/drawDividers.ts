import type { Plan } from "../../core/document/schema"
import type { Mark } from "../../drawing/mark"
import type { Draft } from "../../session/draftStore"
import type { PaneState } from "./paneState"

/** The dividing partings of the plan, under its sections. */
export const dividersAtRest = ({ working, plan, picture }: PaneState): Mark[] =>
  working && plan.workingSections ? working.dividerMarks(plan, picture.scene) : []

const ringPx = 30

/** What of the working sections is written over the sections: crosses, and on a large pane the numbers. */
export function workingSigns({ working, plan, picture, camera, enlarged }: PaneState): Mark[] {
  if (!working || !plan.workingSections) return []
  const crosses = working.crossingMarks(plan, picture.scene)
  return enlarged
    ? [...crosses, ...working.workingNumberMarks(plan, picture.scene, ringPx / camera.pxPerMm)]
    : crosses
}

/** The dividing partings in hand: those that would be new, or the selected one with its handles. */
export function dividersInHand(pane: PaneState, draft: Draft | null): Mark[] {
  if (!pane.working) return []
  if (draft) return draft.plan.workingSections === pane.plan.workingSections ? [] : changed(pane, draft.plan)
  return pane.dividerId === null ? [] : selected(pane, pane.working, pane.dividerId)
}

function changed({ working, plan, picture }: PaneState, next: Plan): Mark[] {
  const known = new Set(plan.workingSections?.dividers)
  const dividers = next.workingSections?.dividers ?? []
  return dividers.flatMap((divider, index) =>
    working && !known.has(divider) ? working.oneDividerMarks(index, next, picture.scene, "selected") : [],
  )
}

function selected(
  { plan, picture, enlarged }: PaneState,
  working: NonNullable<PaneState["working"]>,
  id: string,
): Mark[] {
  const dividers = plan.workingSections?.dividers ?? []
  const index = dividers.findIndex((divider) => divider.id === id)
  if (index < 0) return []
  const line = working.oneDividerMarks(index, plan, picture.scene, "selected")
  if (!enlarged) return line
  const handles = working.dividerHandles(dividers[index], picture.scene)
  return [...line, ...handles.map(({ at }): Mark => ({ kind: "dot", at, ink: "handle" }))]
}
