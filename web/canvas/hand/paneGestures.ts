import type { ScreenPoint } from "../../../geometry/surface/frames"
import { fromView } from "../../../geometry/surface/views"
import { redoAloud, undoAloud } from "../../session/commit"
import { sessionStore } from "../../session/sessionStore"
import { type Camera, fromScreen, panBy, zoomAbout } from "../paint/camera"
import type { PaneState } from "../paint/paneState"
import type { Pointer } from "../tools/tool"
import { listenToGestures } from "./gestures"
import { followHand } from "./handFollower"
import { beginGesture, cancelGesture, endGesture, moveGesture } from "./toolRunner"
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
  const hand = followHand(element, pane, (pointer) => {
    if (stroke === "tool") moveGesture(pointer)
  })

  const moveCamera = (change: (camera: Camera) => Camera) => setCamera(() => change(pane.current.camera))

  const momentOf = (at: ScreenPoint, event: PointerEvent) => ({
    pointer: pointerOn(pane.current, at, event),
    at,
    pointerType: event.pointerType,
  })

  const stop = listenToGestures(element, {
    strokeStart(at, event) {
      last = at
      hand.forget()
      const moment = momentOf(at, event)
      if (beginGesture(moment.pointer)) stroke = "tool"
      else stroke = pane.current.name === "turned" ? "turn" : "page"
      if (stroke === "tool") hand.begin(moment)
    },
    hover: (at, event) => hand.follow(momentOf(at, event)),
    left: hand.forget,
    strokeMove(at, event) {
      if (stroke === "tool") hand.follow(momentOf(at, event))
      else if (last) {
        const [dx, dy] = [at[0] - last[0], at[1] - last[1]]
        if (stroke === "turn") turnBy(dx * radiansPerPx, dy * radiansPerPx)
        else moveCamera((camera) => panBy(camera, dx, dy))
      }
      last = at
    },
    strokeEnd() {
      hand.settle()
      if (stroke === "tool") endGesture()
      stroke = null
      hand.forget()
    },
    strokeCancel() {
      hand.forget()
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
    hand.remove()
    stop()
  }
}

/** What a place of the pane means on the head. */
function pointerOn(
  { name, camera, picture, head }: PaneState,
  at: ScreenPoint,
  event: PointerEvent,
): Pointer {
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
