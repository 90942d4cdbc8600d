import { redoAloud, undoAloud } from "../../session/commit"
import { isTyping } from "../../session/isTyping"

/** Control Z takes back, with Shift makes again: on every screen, save in a field, which has its own. Returns how to stop listening. */
export function listenToUndoKeys(target: Window): () => void {
  const onKey = (event: KeyboardEvent) => {
    if (event.key.toLowerCase() !== "z" || !(event.ctrlKey || event.metaKey) || isTyping(event.target)) return
    event.preventDefault()
    if (event.shiftKey) redoAloud()
    else undoAloud()
  }
  target.addEventListener("keydown", onKey)
  return () => target.removeEventListener("keydown", onKey)
}
