import { redoAloud, undoAloud } from "../plan/act"
import { announce } from "../plan/announcements"
import { copySelected, pasteCopied, selectAll } from "../plan/selected"
import { sessionStore, type ToolName } from "../plan/sessionStore"
import { cancelGesture } from "./toolRunner"

const toolKeys: Record<string, ToolName> = {
  v: "select",
  s: "slice",
  w: "weave",
  b: "backcomb",
  l: "left-out",
  d: "divide",
}

const controlKeys: Record<string, (shift: boolean) => void> = {
  z: (shift) => (shift ? redoAloud() : undoAloud()),
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
    if (event.key === "Escape" && cancelGesture()) announce("Stroke called off")
    if (isTyping(event.target)) return
    if (event.ctrlKey || event.metaKey) {
      const command = controlKeys[event.key.toLowerCase()]
      if (!command || isReading(event)) return
      event.preventDefault()
      command(event.shiftKey)
      return
    }
    const tool = toolKeys[event.key]
    if (tool && !event.altKey) sessionStore.setState({ tool })
  }
  target.addEventListener("keydown", onKey)
  return () => target.removeEventListener("keydown", onKey)
}

const isTyping = (target: EventTarget | null) =>
  target instanceof HTMLTextAreaElement ||
  target instanceof HTMLSelectElement ||
  (target instanceof HTMLInputElement && target.type !== "radio" && target.type !== "checkbox")
