import { planStore } from "./planStore"
import { isUnsaved } from "./saveStatus"

/** Lets the browser ask before a window is left with work that is not on the disk. Gives the way to stop. */
export function askBeforeLeaving(target: Window = window): () => void {
  const ask = (event: BeforeUnloadEvent) => {
    if (isUnsaved(planStore.getState().past.length > 0)) event.preventDefault()
  }
  target.addEventListener("beforeunload", ask)
  return () => target.removeEventListener("beforeunload", ask)
}
