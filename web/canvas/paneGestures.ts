import type { ScreenPoint } from "../../geometry/frames"
import { fromView } from "../../geometry/views"
import { redoAloud, undoAloud } from "../plan/act"
import { sessionStore } from "../plan/sessionStore"
import { type Camera, fromScreen, panBy, zoomAbout } from "./camera"
import type { PaneState } from "./drawPane"
import { listenToGestures } from "./gestures"
import { makeReadout } from "./handReadout"
import { handWords } from "./handWords"
import { beginGesture, cancelGesture, endGesture, moveGesture } from "./toolRunner"
import type { Pointer } from "./tools/tool"
import { turnBy } from "./turn"

const fingerReachPx = 22
const mouseReachPx = 9
const radiansPerPx = 0.008

/** The door: turns hands on one pane into pointers on the head, or into turning, moving and zooming its page. */
export function listenToPane(
  element: HTMLElement,
  pane: { readonly current: PaneState },
  setCamera: (change: (camera: Camera | null) => Camera | null) => void,
): () => void {
  let stroke: "tool" | "turn" | "page" | null = null
  let last: ScreenPoint | null = null
  let pending: { pointer: Pointer; at: ScreenPoint; type: string } | null = null
  let frame = 0
  const readout = makeReadout(element)
  let began: ScreenPoint | null = null

  const moveCamera = (change: (camera: Camera) => Camera) => setCamera(() => change(pane.current.camera))

  const pointerAt = (at: ScreenPoint, event: PointerEvent): Pointer => {
    const { name, camera, picture, head } = pane.current
    const page = fromScreen(camera, at)
    const reachPx = event.pointerType === "touch" ? fingerReachPx : mouseReachPx
    return {
      viewName: name,
      scene: picture.scene,
      page,
      at: fromView(picture.scene.view, head.surface, page),
      reachMm: reachPx / camera.pxPerMm,
      shift: event.shiftKey,
      alt: event.altKey,
      adds: event.shiftKey || event.ctrlKey || event.metaKey || sessionStore.getState().several,
    }
  }

  const follow = (at: ScreenPoint, event: PointerEvent) => {
    pending = { pointer: pointerAt(at, event), at, type: event.pointerType }
    frame ||= requestAnimationFrame(flush)
  }

  const flush = () => {
    frame = 0
    if (!pending) return
    const { pointer, at, type } = pending
    pending = null
    if (stroke === "tool") moveGesture(pointer)
    say(pointer, at, type)
  }

  const say = (pointer: Pointer, at: ScreenPoint, type: string) =>
    readout.show(pane.current.enlarged ? handWords(pointer, pane.current) : [], {
      at,
      from: stroke ? began : null,
      pointerType: type,
    })

  const forget = () => {
    cancelAnimationFrame(frame)
    frame = 0
    pending = null
    readout.show([])
  }

  const stop = listenToGestures(element, {
    strokeStart(at, event) {
      last = at
      began = at
      forget()
      const pointer = pointerAt(at, event)
      if (beginGesture(pointer)) stroke = "tool"
      else stroke = pane.current.name === "turned" ? "turn" : "page"
      if (stroke === "tool") say(pointer, at, event.pointerType)
    },
    hover: follow,
    left: forget,
    strokeMove(at, event) {
      if (stroke === "tool") follow(at, event)
      else if (last) {
        const [dx, dy] = [at[0] - last[0], at[1] - last[1]]
        if (stroke === "turn") turnBy(dx * radiansPerPx, dy * radiansPerPx)
        else moveCamera((camera) => panBy(camera, dx, dy))
      }
      last = at
    },
    strokeEnd() {
      cancelAnimationFrame(frame)
      flush()
      if (stroke === "tool") endGesture()
      stroke = null
      forget()
    },
    strokeCancel() {
      forget()
      if (stroke === "tool") cancelGesture()
      stroke = null
    },
    pinch: (from, to, factor) =>
      moveCamera((camera) => zoomAbout(panBy(camera, to[0] - from[0], to[1] - from[1]), to, factor)),
    wheel: (at, event) => moveCamera((camera) => zoomAbout(camera, at, Math.exp(-event.deltaY * 0.0016))),
    tap: (fingers) => (fingers === 2 ? undoAloud() : redoAloud()),
    penSeen: () => sessionStore.setState({ penOnly: true }),
    fingersOnlyMove: () => sessionStore.getState().penOnly,
  })
  return () => {
    forget()
    readout.remove()
    stop()
  }
}
