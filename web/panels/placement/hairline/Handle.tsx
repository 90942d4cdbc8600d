import type { KeyboardEvent } from "react"
import type { SurfacePoint, ViewPoint } from "../../../../geometry/surface/frames"
import { nudged } from "../../../drawing/landmarkPlaces"
import type { OverlaidPane } from "../../../drawing/paneOverlay"
import { useDrag } from "./useDrag"

type Props = {
  pane: OverlaidPane
  page: ViewPoint
  at: SurfacePoint
  label: string
  /** What stands beside it. */
  name: string
  isChosen: boolean
  /** Of several chosen the one that says so. */
  isNamed?: boolean
  onChoose(): void
  onNudge(at: SurfacePoint): void
  drag: Parameters<typeof useDrag>[2]
}

const arrows: Record<string, readonly [right: number, up: number]> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
}
const shiftMm = 5

/** A place of the head that a hand can take hold of; the arrow keys move it by 1 mm, with Shift by 5. */
export function Handle({
  pane,
  page,
  at,
  label,
  name,
  isChosen,
  isNamed = false,
  onChoose,
  onNudge,
  drag,
}: Props) {
  const onPane = pane.toPane(page)
  const hands = useDrag(pane, onPane, drag)
  const onKeyDown = (event: KeyboardEvent) => {
    const arrow = arrows[event.key]
    if (!arrow) return
    event.preventDefault()
    const mm = event.shiftKey ? shiftMm : 1
    onNudge(nudged(at, pane.scene, [arrow[0] * mm, arrow[1] * mm]))
  }
  return (
    <button
      type="button"
      className={`handle name-${nameSide(onPane[0], pane.width)} ${isNamed ? "is-named" : ""}`}
      aria-label={label}
      aria-pressed={isChosen}
      aria-keyshortcuts="ArrowLeft ArrowRight ArrowUp ArrowDown"
      style={{ transform: `translate(${onPane[0].toFixed(1)}px, ${onPane[1].toFixed(1)}px)` }}
      onFocus={onChoose}
      onKeyDown={onKeyDown}
      {...hands}
    >
      <span className="dot" />
      <span className="handle-name" aria-hidden="true">
        {name}
      </span>
    </button>
  )
}

/** The name stands toward the middle of the page: there is the face, and not what is drawn. */
function nameSide(x: number, width: number) {
  if (Math.abs(x - width / 2) < width / 20) return "under"
  return x < width / 2 ? "right" : "left"
}
