import { type PointerEvent, useEffect, useRef } from "react"
import { type ScreenPoint, type SurfacePoint, screenPoint } from "../../../../geometry/surface/frames"
import { fromView } from "../../../../geometry/surface/views"
import type { OverlaidPane } from "../../../drawing/paneOverlay"

type Drag = {
  move(at: SurfacePoint | null): void
  drop(at: SurfacePoint | null): void
  cancel(): void
}
type Hold = { id: number; aside: ScreenPoint; last: SurfacePoint | null; hasMoved: boolean }

/** A hand that moves less than this only chooses, pixels. */
const restPx = 3

/** A handle that a hand can take hold of and lay down elsewhere on the head; Escape calls it off. */
export function useDrag(pane: OverlaidPane, handleAt: ScreenPoint, drag: Drag) {
  const hold = useRef<Hold | null>(null)
  const frame = useRef(0)
  const letGo = () => {
    cancelAnimationFrame(frame.current)
    hold.current = null
  }
  const cancel = () => {
    if (!hold.current) return
    letGo()
    drag.cancel()
  }
  useEscape(cancel)
  return {
    onPointerDown(event: PointerEvent<HTMLElement>) {
      if (event.button > 0 || hold.current) return
      event.currentTarget.setPointerCapture(event.pointerId)
      const [x, y] = placeOf(event)
      const aside = screenPoint(handleAt[0] - x, handleAt[1] - y)
      hold.current = { id: event.pointerId, aside, last: null, hasMoved: false }
    },
    onPointerMove(event: PointerEvent<HTMLElement>) {
      const held = hold.current
      if (held?.id !== event.pointerId) return
      const [x, y] = placeOf(event)
      const [px, py] = [x + held.aside[0], y + held.aside[1]]
      held.hasMoved ||= Math.hypot(px - handleAt[0], py - handleAt[1]) > restPx
      if (!held.hasMoved) return
      held.last = fromView(pane.scene.view, pane.scene.head.surface, pane.fromPane(screenPoint(px, py)))
      cancelAnimationFrame(frame.current)
      frame.current = requestAnimationFrame(() => drag.move(held.last))
    },
    onPointerUp(event: PointerEvent<HTMLElement>) {
      const held = hold.current
      if (held?.id !== event.pointerId) return
      letGo()
      if (!held.hasMoved) return
      drag.move(held.last)
      drag.drop(held.last)
    },
    onPointerCancel: cancel,
  }
}

/** Where a pointer is on the overlay that its handle lies on. */
function placeOf({ clientX, clientY, currentTarget }: PointerEvent<HTMLElement>): ScreenPoint {
  const box = currentTarget.closest(".pane-overlay")?.getBoundingClientRect()
  return screenPoint(clientX - (box?.left ?? 0), clientY - (box?.top ?? 0))
}

function useEscape(cancel: () => void) {
  const latest = useRef(cancel)
  latest.current = cancel
  useEffect(() => {
    const onKey = ({ key }: KeyboardEvent) => {
      if (key === "Escape") latest.current()
    }
    window.addEventListener("keydown", onKey)
    return () => window.removeEventListener("keydown", onKey)
  }, [])
}
