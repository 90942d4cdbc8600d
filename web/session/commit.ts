import type { Section } from "../../geometry/section/section"
import type { Edit } from "../core/document/edit"
import { redoLabel, undoLabel } from "../core/document/history"
import type { Plan } from "../core/document/schema"
import { announce, announceRefusal } from "./announcements"
import { edit, planStore, redo, undo } from "./planStore"
import { sessionStore } from "./sessionStore"
import { type Done, doneWords, refusalWords, words } from "./words"

/** Make a change and say so; a refusal is said instead. Selects what the change made. True when it was made. */
export function commit(label: Done, change: Edit, key?: string): boolean {
  const before = planStore.getState().present
  const refusal = edit(label, change, key)
  if (refusal) {
    announceRefusal(refusalWords(refusal.refused))
    return false
  }
  const made = inHand(madeSince(before, planStore.getState().present))
  if (made.length > 0) sessionStore.setState({ selectedIds: made.map(({ id }) => id) })
  announce(doneWords(label))
  return true
}

function madeSince(before: Plan, { sections }: Plan): readonly Section[] {
  const known = new Set(before.sections.map(({ id }) => id))
  return sections.filter(({ id }) => !known.has(id))
}

/** Of one pair its first is enough: what is done to it is done to both. */
function inHand(made: readonly Section[]): readonly Section[] {
  const [first, second, ...more] = made
  return second && more.length === 0 && first.twin === second.id ? [first] : made
}

/** Take back the last change and say which. */
export function undoAloud() {
  const label = undoLabel(planStore.getState())
  undo()
  if (label) announce(words().plans.undone(doneWords(label)))
}

/** Make the change again that was taken back last, and say which. */
export function redoAloud() {
  const label = redoLabel(planStore.getState())
  redo()
  if (label) announce(words().plans.doneAgain(doneWords(label)))
}
