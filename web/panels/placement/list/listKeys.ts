import type { KeyboardEvent } from "react"
import { flushSync } from "react-dom"
import { isFoil, type Section } from "../../../../geometry/section/section"
import { sectionNameOf } from "../../../core/document/sectionNameCode"
import { placeBeside } from "../../../core/edits/sections/reorderSection"
import { commit } from "../../../session/commit"
import { planStore } from "../../../session/planStore"
import { mirrorSelected, removeSelected } from "../../../session/selected"
import { sessionStore } from "../../../session/sessionStore"
import type { Done } from "../../../session/words"
import { listedSections } from "../working/ListGroup"

/** What the keys do while the list has the focus. */
export function onListKey(event: KeyboardEvent) {
  const command = listKeys[event.altKey ? `Alt+${event.key}` : event.key]
  if (!command || event.ctrlKey || event.metaKey) return
  event.preventDefault()
  command(event.shiftKey)
}

const listKeys: Record<string, (extend: boolean) => void> = {
  ArrowDown: (extend) => step(1, extend),
  ArrowUp: (extend) => step(-1, extend),
  Home: () => selectOnly(listedSections()[0]),
  End: () => selectOnly(listedSections().at(-1)),
  "Alt+ArrowDown": () => applyBy(1),
  "Alt+ArrowUp": () => applyBy(-1),
  Delete: removeInHand,
  Backspace: removeInHand,
  m: mirrorSelected,
}

/** Takes the selected sections off the plan. The focus stays by the list, though the row or the button went with them. */
export function removeInHand() {
  flushSync(removeSelected)
  const list = document.querySelector<HTMLElement>("[role=listbox]")
  const stays = list ?? document.getElementById("foils-title")
  stays?.focus({ preventScroll: true })
}

const selectOnly = (section: Section | undefined) =>
  section && sessionStore.setState({ selectedIds: [section.id] })

function step(by: number, extend: boolean) {
  const sections = listedSections()
  const { selectedIds } = sessionStore.getState()
  const at = sections.findIndex(({ id }) => id === selectedIds.at(-1))
  const next = sections[Math.max(0, Math.min(sections.length - 1, at < 0 ? 0 : at + by))]
  sessionStore.setState({
    selectedIds: extend ? [...selectedIds.filter((id) => id !== next.id), next.id] : [next.id],
  })
}

/** All rows from the one chosen last to this one. */
export function selectThrough(id: string) {
  const sections = listedSections()
  const { selectedIds } = sessionStore.getState()
  const ends = [selectedIds.at(-1) ?? id, id].map((end) => sections.findIndex((each) => each.id === end))
  const between = sections.slice(Math.min(...ends), Math.max(...ends) + 1).map((section) => section.id)
  sessionStore.setState({
    selectedIds: [...selectedIds.filter((each) => !between.includes(each)), ...between],
  })
}

/** Applies the section chosen last earlier or later by one row of the list. */
export function applyBy(by: 1 | -1) {
  const sections = listedSections()
  const id = sessionStore.getState().selectedIds.at(-1)
  const at = sections.findIndex((section) => section.id === id)
  const beside = sections[at + by]
  if (at >= 0 && beside) applyBeside([sections[at].id], beside.id, by < 0 ? "before" : "after")
}

/** Puts sections beside another in the order of application, and says where they go on. */
export function applyBeside(ids: readonly string[], besideId: string, side: "before" | "after") {
  const place = placeBeside(ids, besideId, side)
  const plan = planStore.getState().present
  const after = place(plan)
  if (after === plan || "refused" in after) return
  const first = after.sections.find(({ id }) => ids.includes(id))
  if (first) commit(placeDone(first, after.sections, ids.length), place)
}

function placeDone(first: Section, sections: readonly Section[], count: number): Done {
  const section = sectionNameOf(first)
  const foils = sections.filter(isFoil)
  const before = foils.filter((foil) => sections.indexOf(foil) < sections.indexOf(first)).length
  const total = foils.length
  if (!isFoil(first))
    return { chapter: "placement", code: "apply-left-out", section, count, before, foils: total }
  return { chapter: "placement", code: "apply-at", section, count, place: before + 1, foils: total }
}
