import { redoAloud, undoAloud } from "../plan/act"
import { announce } from "../plan/announcements"
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

/** Keys that work wherever the focus is, save in a field. Returns how to stop listening. */
export function listenToKeys(target: Window): () => void {
  const onKey = (event: KeyboardEvent) => {
    if (event.key === "Escape" && cancelGesture()) announce("Stroke called off")
    if (isTyping(event.target)) return
    if (event.ctrlKey || event.metaKey) {
      if (event.key.toLowerCase() !== "z") return
      event.preventDefault()
      if (event.shiftKey) redoAloud()
      else undoAloud()
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
