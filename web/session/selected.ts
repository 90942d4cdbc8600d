import type { Section } from "../../geometry/section/section"
import { breakPairs } from "../core/edits/sections/breakPairs"
import { mirrorSections } from "../core/edits/sections/mirrorSections"
import { pasteSections } from "../core/edits/sections/pasteSections"
import { removeSections } from "../core/edits/sections/removeSections"
import { countText } from "../core/text/figureText"
import { announce, announceRefusal } from "./announcements"
import { readCopied, writeCopied } from "./clipboard"
import { commit } from "./commit"
import { planStore } from "./planStore"
import { sessionStore } from "./sessionStore"

/** What is done to the selection from keys, buttons and list alike. */

const sections = () => planStore.getState().present.sections

/** The selected sections in order of application. */
const selected = (): Section[] => {
  const { selectedIds } = sessionStore.getState()
  return sections().filter(({ id }) => selectedIds.includes(id))
}

const several = (verb: string, count: number) =>
  count === 1 ? `${verb} a section` : `${verb} ${countText(count, "section")}`

export function selectAll() {
  sessionStore.setState({ selectedIds: sections().map(({ id }) => id) })
  announce(`${countText(sections().length, "section")} selected`)
}

/** Takes a section into the selection, or out of it. */
export function toggleSelected(id: string) {
  const { selectedIds } = sessionStore.getState()
  sessionStore.setState({
    selectedIds: selectedIds.includes(id)
      ? selectedIds.filter((other) => other !== id)
      : [...selectedIds, id],
  })
}

/** Take the selected sections off the plan. */
export function removeSelected() {
  const { selectedIds } = sessionStore.getState()
  if (selectedIds.length === 0) return
  commit(several("Delete", selectedIds.length), removeSections(...selectedIds))
  sessionStore.setState({ selectedIds: [] })
}

/** Put copies of the selected sections on the other side of the head. */
export function mirrorSelected() {
  const { selectedIds } = sessionStore.getState()
  if (selectedIds.length > 0) commit("Mirror to the other side", mirrorSections(...selectedIds))
}

export function breakSelectedPairs() {
  commit("Break the pair", breakPairs(...sessionStore.getState().selectedIds))
}

/** Keeps the selected sections to be pasted here, in another plan of this browser, or in another window. */
export function copySelected() {
  const copied = selected()
  if (copied.length === 0) return
  if (writeCopied(copied)) announce(`${countText(copied.length, "section")} copied`)
  else announceRefusal("This browser keeps nothing here: copying needs its storage.")
}

export function pasteCopied() {
  const copied = readCopied()
  if (copied === null) announceRefusal("What was copied cannot be read: copy the sections again.")
  else if (copied.length === 0) announceRefusal("Nothing has been copied yet.")
  else commit(several("Paste", copied.length), pasteSections(copied))
}
