import { type ScreenPoint, screenPoint } from "../../../geometry/surface/frames"
import { fingerDown, fingerMoved, fingersTapped, noTap } from "./fingerTap"

/** What a pane is told about hands on it: strokes of one pointer, pinches of two, the wheel. Pane pixels. */
export type GestureHandlers = {
  strokeStart(at: ScreenPoint, event: PointerEvent): void
  strokeMove(at: ScreenPoint, event: PointerEvent): void
  /** A mouse or a pen passes over without pressing. */
  hover(at: ScreenPoint, event: PointerEvent): void
  left(): void
  strokeEnd(): void
  strokeCancel(): void
  /** Fingers moved from one middle to another and apart by a factor. */
  pinch(from: ScreenPoint, to: ScreenPoint, factor: number): void
  wheel(at: ScreenPoint, event: WheelEvent): void
  /** Two fingers or more came down and up again at once. */
  tap(fingers: number): void
  penSeen(): void
  /** Whether fingers may only move the page, because a pen draws. */
  fingersOnlyMove(): boolean
}

/** Understand raw pointers on one element, once. Returns how to stop listening. */
export function listenToGestures(element: HTMLElement, handlers: GestureHandlers): () => void {
  const touches = new Map<number, ScreenPoint>()
  let stroke: number | null = null
  let strokeIsPen = false
  let tap = noTap

  const placeOf = (event: PointerEvent | WheelEvent) => {
    const box = element.getBoundingClientRect()
    return screenPoint(event.clientX - box.left, event.clientY - box.top)
  }
  const cancelStroke = () => {
    if (stroke === null) return
    stroke = null
    handlers.strokeCancel()
  }

  const down = (event: PointerEvent) => {
    if (event.button > 0 || (strokeIsPen && stroke !== null) || isOnButton(event)) return
    element.setPointerCapture(event.pointerId)
    const at = placeOf(event)
    if (event.pointerType === "pen") handlers.penSeen()
    if (event.pointerType === "touch") {
      tap = fingerDown(tap, event.pointerId, at, event.timeStamp, touches.size === 0)
      touches.set(event.pointerId, at)
      if (touches.size > 1 || handlers.fingersOnlyMove()) {
        cancelStroke()
        return
      }
    }
    if (stroke !== null) return
    stroke = event.pointerId
    strokeIsPen = event.pointerType === "pen"
    handlers.strokeStart(at, event)
  }

  const move = (event: PointerEvent) => {
    const at = placeOf(event)
    if (touches.has(event.pointerId)) tap = fingerMoved(tap, event.pointerId, at)
    if (event.pointerId === stroke) handlers.strokeMove(at, event)
    else if (touches.has(event.pointerId)) movePage(event.pointerId, at)
    else if (stroke === null && isOnButton(event)) handlers.left()
    else if (stroke === null && event.pointerType !== "touch") handlers.hover(at, event)
    if (touches.has(event.pointerId)) touches.set(event.pointerId, at)
  }

  const movePage = (id: number, at: ScreenPoint) => {
    if (tap.isStill && touches.size > 1) return
    const before = [...touches.values()]
    const after = [...touches].map(([touch, place]) => (touch === id ? at : place))
    const apart = spreadOf(before)
    handlers.pinch(middleOf(before), middleOf(after), apart > 0 ? spreadOf(after) / apart : 1)
  }

  const up = (event: PointerEvent) => {
    if (touches.delete(event.pointerId) && touches.size === 0) {
      const fingers = fingersTapped(tap, event.timeStamp)
      if (fingers > 1) handlers.tap(fingers)
    }
    if (event.pointerId !== stroke) return
    stroke = null
    handlers.strokeEnd()
  }

  const cancel = (event: PointerEvent) => {
    touches.delete(event.pointerId)
    if (event.pointerId === stroke) cancelStroke()
  }

  const leave = () => {
    if (stroke === null) handlers.left()
  }

  const wheel = (event: WheelEvent) => {
    event.preventDefault()
    handlers.wheel(placeOf(event), event)
  }
  /** Keeps handwriting recognition and page scrolling from eating short strokes. */
  const keepTouch = (event: TouchEvent) => event.preventDefault()

  element.addEventListener("pointerdown", down)
  element.addEventListener("pointermove", move)
  element.addEventListener("pointerup", up)
  element.addEventListener("pointercancel", cancel)
  element.addEventListener("pointerleave", leave)
  element.addEventListener("wheel", wheel, { passive: false })
  element.addEventListener("touchmove", keepTouch, { passive: false })
  return () => {
    element.removeEventListener("pointerdown", down)
    element.removeEventListener("pointermove", move)
    element.removeEventListener("pointerup", up)
    element.removeEventListener("pointercancel", cancel)
    element.removeEventListener("pointerleave", leave)
    element.removeEventListener("wheel", wheel)
    element.removeEventListener("touchmove", keepTouch)
  }
}

/** A button or a handle that lies on the page keeps its hands to itself. */
const isOnButton = ({ target }: PointerEvent) =>
  target instanceof Element && target.closest("button, [role=slider]") !== null

const middleOf = (points: readonly ScreenPoint[]) =>
  screenPoint(
    points.reduce((sum, [x]) => sum + x, 0) / points.length,
    points.reduce((sum, [, y]) => sum + y, 0) / points.length,
  )

function spreadOf(points: readonly ScreenPoint[]) {
  const [mx, my] = middleOf(points)
  return points.length < 2 ? 0 : Math.max(...points.map(([x, y]) => Math.hypot(x - mx, y - my)))
}
