import { useRef } from "react"
import { saySecondTap } from "../../session/chair/chairStore"

const withinMs = 1000
const withinPx = 40

/**
 * A second touch within a second on the same spot is a slip of the hand: after the first one something else may stand
 * there. It does nothing, and the screen says so. Keys have no spot and are not held back.
 */
export function useTwiceGuard() {
  const last = useRef<{ atMs: number; x: number; y: number } | null>(null)
  return (event: React.MouseEvent) => {
    if (event.detail === 0 || (event.target as Element).closest("[data-again]")) return
    const { timeStamp: atMs, clientX: x, clientY: y } = event
    const before = last.current
    if (before && atMs - before.atMs < withinMs && Math.hypot(x - before.x, y - before.y) < withinPx) {
      event.preventDefault()
      event.stopPropagation()
      saySecondTap()
      return
    }
    last.current = { atMs, x, y }
  }
}
