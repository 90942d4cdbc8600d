import { useStore } from "zustand"
import { announcements } from "../plan/announcements"

/** Says each change once to a screen reader; a refusal is shown to everyone. */
export function LiveRegion() {
  const { text, isRefusal } = useStore(announcements)
  return (
    <output className={isRefusal ? "refusal" : "unseen"} aria-live="polite">
      {text}
    </output>
  )
}
