import { useEffect, useState } from "react"
import { wordsIfHere } from "../../session/words"
import type { PartShape } from "./PartFault"

/** How long a frame may stand empty before a word stands in it, ms. */
const silenceMs = 1000

/** The frame of a part that is on its way: at once, and after a second with a word. */
export function PartWaiting({ shape }: { shape: PartShape }) {
  const [isLong, setLong] = useState(false)
  useEffect(() => {
    const timer = setTimeout(() => setLong(true), silenceMs)
    return () => clearTimeout(timer)
  }, [])
  const word = isLong && <p className="part-waiting">{wordsIfHere()?.plans.parts.waiting ?? "…"}</p>
  if (shape === "line") return <span className="kept">{word}</span>
  return shape === "aside" ? (
    <aside className="list" aria-busy="true">
      {word}
    </aside>
  ) : (
    <main aria-busy="true">{word}</main>
  )
}
