import { useEffect } from "react"
import { useStore } from "zustand"
import { announcements } from "../../session/announcements"

/** Says each change once to a screen reader; a refusal stands on the screen until the next thing is done. */
export function LiveRegion() {
  const { text, isRefusal, turn } = useStore(announcements)
  useEffect(() => {
    if (!isRefusal) return
    const clear = () => announcements.setState({ text: "", isRefusal: false })
    window.addEventListener("pointerdown", clear)
    return () => window.removeEventListener("pointerdown", clear)
  }, [isRefusal])
  return (
    <output className={isRefusal ? "refusal" : "unseen"} aria-live="polite">
      {/* The same words again are a change to a reader only in a new element. */}
      <span key={turn}>{text}</span>
    </output>
  )
}
