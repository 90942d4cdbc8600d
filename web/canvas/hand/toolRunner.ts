import { isRefusal } from "../../core/document/edit"
import type { Refusal } from "../../core/document/refusal"
import type { Plan } from "../../core/document/schema"
import { headOf } from "../../core/figures/measured"
import { directionIn, hairlinePointOf } from "../../core/placement/places"
import { announce, announceRefusal } from "../../session/announcements"
import { commit } from "../../session/commit"
import { draftStore, type Hint } from "../../session/draftStore"
import { planStore } from "../../session/planStore"
import { dividerInHand, sessionStore } from "../../session/sessionStore"
import { type Done, doneWords, refusalWords, words } from "../../session/words"
import { boxTool } from "../tools/boxTool"
import { dividerHandleTool, dividerTool } from "../tools/dividerTool"
import { divideTool } from "../tools/divideTool"
import { drawTool } from "../tools/drawTool"
import { selectTool } from "../tools/selectTool"
import type { Finished, Pointer, Situation, Tool } from "../tools/tool"
import { tellSelected } from "./tellSelected"

/** A gesture under way: its tool with the tool's own draft inside, so that no one else needs to know its shape. */
type Gesture = {
  move(pointer: Pointer): void
  finish(): Finished
}

let gesture: Gesture | null = null

const situation = (): Situation => {
  const plan = planStore.getState().present
  const session = sessionStore.getState()
  return {
    plan,
    head: headOf(plan),
    selectedIds: session.selectedIds,
    dividerId: dividerInHand(session),
  }
}

/** A hand comes down. False when the tool has no use for it there. */
export function beginGesture(pointer: Pointer): boolean {
  const { tool, ...drawn } = sessionStore.getState()
  if (tool === "hairline") return false
  if (tool === "select") gesture = takeHold(pointer)
  else if (tool === "divide") gesture = gestureOf(divideTool(drawn.way), pointer)
  else gesture = gestureOf(drawTool(tool, drawn), pointer)
  if (!gesture && tool === "select") sessionStore.setState({ selectedIds: [], dividerId: null })
  return gesture !== null
}

/** Handles lie over sections, and sections over the dividing partings. */
const takeHold = (pointer: Pointer) =>
  gestureOf(dividerHandleTool, pointer) ??
  gestureOf(selectTool, pointer) ??
  gestureOf(dividerTool, pointer) ??
  (pointer.adds ? gestureOf(boxTool, pointer) : null)

function gestureOf<Draft>(tool: Tool<Draft>, pointer: Pointer): Gesture | null {
  const world = situation()
  const start = tool.start(pointer, world)
  if (start === null) return null
  let current: Draft = start
  return {
    move(next) {
      current = tool.move(current, next, world)
    },
    finish: () => tool.finish(current, world),
  }
}

/** The hand moves: the draft follows, and with it every page and figure. */
export function moveGesture(pointer: Pointer) {
  if (!gesture) return
  gesture.move(pointer)
  showDraft(gesture.finish())
}

/** What a stroke would be called that nothing comes of. */
const notYet: Done = { chapter: "placement", code: "move" }

function showDraft(finished: Finished) {
  const plan = planStore.getState().present
  const refuse = ({ refused }: Refusal) =>
    draftStore.setState({ draft: { label: notYet, plan, changed: [], refused: refusalWords(refused) } })
  if ("refused" in finished) return refuse(finished)
  if ("box" in finished && finished.box) draftStore.setState({ box: finished.box })
  if (!("edit" in finished)) return
  const next = finished.edit(plan)
  if (isRefusal(next)) return refuse(next)
  const { label, hint } = finished
  const changed = changedSections(plan, next)
  draftStore.setState({ draft: { label, plan: next, changed, ...(hint && { hint }) } })
}

const changedSections = (before: Plan, after: Plan) => {
  const known = new Set(before.sections)
  return after.sections.filter((section) => !known.has(section))
}

/** The hand lifts: one edit, one step of undo. */
export function endGesture() {
  if (!gesture) return
  const finished = gesture.finish()
  gesture = null
  draftStore.setState({ draft: null, box: null })
  if ("refused" in finished) announceRefusal(refusalWords(finished.refused))
  else {
    if ("edit" in finished && commit(finished.label, finished.edit)) announce(told(finished))
    if ("select" in finished && finished.select) {
      sessionStore.setState({ selectedIds: finished.select })
      if (!("edit" in finished)) tellSelected(finished.select)
    }
    if ("divider" in finished && finished.divider)
      sessionStore.setState({ dividerId: finished.divider, selectedIds: [] })
  }
}

/** The stroke is called off: nothing happened. True when there was one. */
export function cancelGesture(): boolean {
  const called = gesture !== null
  gesture = null
  draftStore.setState({ draft: null, box: null })
  return called
}

/** What was done, and for one section where it lies and how it runs: the words beside the hand, said once at the end. */
function told({ label, hint, divider }: { label: Done; hint?: Hint; divider?: string }): string {
  const { plan, head, selectedIds } = situation()
  const done = doneWords(label)
  if (divider) return done
  const [made, ...more] = plan.sections.filter(({ id }) => selectedIds.includes(id))
  if (!made || more.length > 0) return done
  const { common, placement } = words()
  const where = common.hairlinePoint.behind(hairlinePointOf(made.parting[made.parting.length >> 1], head))
  const runs = hint ? placement.map.snapped(hint) : common.direction(directionIn(made, head))
  return placement.map.told({ done, where, runs })
}
