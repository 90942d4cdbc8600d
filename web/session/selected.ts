import type { Section } from "../../geometry/section/section"
import { breakPairs } from "../core/edits/sections/breakPairs"
import { mirrorSections } from "../core/edits/sections/mirrorSections"
import { pasteSections } from "../core/edits/sections/pasteSections"
import { removeSections } from "../core/edits/sections/removeSections"
import { announce, announceRefusal } from "./announcements"
import { readCopied, writeCopied } from "./clipboard"
import { commit } from "./commit"
import { planStore } from "./planStore"
import { sessionStore } from "./sessionStore"
import { words } from "./words"

/** What is done to the selection from keys, buttons and list alike. */

const sections = () => planStore.getState().present.sections

/** The selected sections in order of application. */
const selected = (): Section[] => {
  const { selectedIds } = sessionStore.getState()
  return sections().filter(({ id }) => selectedIds.includes(id))
}

export function selectAll() {
  sessionStore.setState({ selectedIds: sections().map(({ id }) => id) })
  announce(words().placement.list.selected(sections().length))
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
  commit({ chapter: "placement", code: "delete", count: selectedIds.length }, removeSections(...selectedIds))
  sessionStore.setState({ selectedIds: [] })
}

/** Put copies of the selected sections on the other side of the head. */
export function mirrorSelected() {
  const { selectedIds } = sessionStore.getState()
  if (selectedIds.length > 0) commit({ chapter: "placement", code: "mirror" }, mirrorSections(...selectedIds))
}

export function breakSelectedPairs() {
  commit({ chapter: "placement", code: "break-pair" }, breakPairs(...sessionStore.getState().selectedIds))
}

/** Keeps the selected sections to be pasted here, in another plan of this browser, or in another window. */
export function copySelected() {
  const copied = selected()
  if (copied.length === 0) return
  if (writeCopied(copied)) announce(words().placement.list.copied(copied.length))
  else announceRefusal(words().placement.list.copyRefused)
}

export function pasteCopied() {
  const copied = readCopied()
  if (copied === null) announceRefusal(words().placement.list.pasteUnreadable)
  else if (copied.length === 0) announceRefusal(words().placement.list.pasteNothing)
  else commit({ chapter: "placement", code: "paste", count: copied.length }, pasteSections(copied))
}
