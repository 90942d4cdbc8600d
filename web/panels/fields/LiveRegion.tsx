import { useEffect } from "react"
import { useStore } from "zustand"
import { announcements } from "../../session/announcements"

/** Says each change once to a screen reader; a refusal stands on the screen until the next thing is done. */
export function LiveRegion() {
  const { text, isRefusal } = useStore(announcements)
  useEffect(() => {
    if (!isRefusal) return
    const clear = () => announcements.setState({ text: "", isRefusal: false })
    window.addEventListener("pointerdown", clear)
    return () => window.removeEventListener("pointerdown", clear)
  }, [isRefusal])
  return (
    <output className={isRefusal ? "refusal" : "unseen"} aria-live="polite">
      {text}
    </output>
  )
}
