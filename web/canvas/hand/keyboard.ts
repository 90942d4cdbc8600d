import { moveSections } from "../../core/edits/parting/moveSections"
import { kindRecords, sectionKindNames } from "../../core/kinds/kindRecords"
import type { NudgeWay, ToolName } from "../../core/placement/tools"
import { announce } from "../../session/announcements"
import { commit } from "../../session/commit"
import { isTyping } from "../../session/isTyping"
import { copySelected, pasteCopied, selectAll } from "../../session/selected"
import { sessionStore, takeTool } from "../../session/sessionStore"
import { words } from "../../session/words"
import { cancelGesture } from "./toolRunner"

const toolKeys = new Map<string, ToolName>([
  ["v", "select"],
  ...sectionKindNames.map((kind) => [kindRecords[kind].key, kind] as const),
  ["d", "divide"],
  ["h", "hairline"],
])

const controlKeys: Record<string, () => void> = {
  a: selectAll,
  c: copySelected,
  v: pasteCopied,
}

/** Words of the page that are marked are copied as words. */
const isReading = ({ key }: KeyboardEvent) =>
  key.toLowerCase() === "c" && (window.getSelection()?.toString() ?? "") !== ""

/** Keys that work wherever the focus is, save in a field. Returns how to stop listening. */
export function listenToKeys(target: Window): () => void {
  const onKey = (event: KeyboardEvent) => {
    if (event.key === "Escape" && cancelGesture()) announce(words().placement.map.strokeCancelled)
    if (isTyping(event.target)) return
    if (event.ctrlKey || event.metaKey) {
      const command = controlKeys[event.key.toLowerCase()]
      if (!command || isReading(event)) return
      event.preventDefault()
      command()
      return
    }
    if (event.target === document.body && nudge(event)) return
    const tool = toolKeys.get(event.key)
    if (!tool || event.altKey) return
    takeTool(tool)
    announce(words().placement.toolRail.tools[tool])
  }
  target.addEventListener("keydown", onKey)
  return () => target.removeEventListener("keydown", onKey)
}

const nudges: Record<string, { alongMm: number; behindMm: number; way: NudgeWay }> = {
  ArrowUp: { alongMm: 0, behindMm: 1, way: "away" },
  ArrowDown: { alongMm: 0, behindMm: -1, way: "towards" },
  ArrowLeft: { alongMm: 1, behindMm: 0, way: "right" },
  ArrowRight: { alongMm: -1, behindMm: 0, way: "left" },
}
/** How much farther a nudge goes with Shift. */
const farther = 5

/** Moves what is selected by a millimetre, as one sees it in front of the client. True when there was something to move. */
function nudge(event: KeyboardEvent): boolean {
  const { selectedIds } = sessionStore.getState()
  const nudged = nudges[event.key]
  if (!nudged || selectedIds.length === 0) return false
  event.preventDefault()
  const times = event.shiftKey ? farther : 1
  const step = { alongMm: nudged.alongMm * times, behindMm: nudged.behindMm * times }
  commit(
    { chapter: "placement", code: "nudge", mm: times, way: nudged.way },
    moveSections(selectedIds, step),
    `move:${selectedIds.join(",")}`,
  )
  return true
}
