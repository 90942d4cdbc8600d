import type { KeyboardEvent } from "react"
import { useStore } from "zustand"
import { toView } from "../../../../geometry/surface/views"
import type { OverlaidPane } from "../../../drawing/paneOverlay"
import { type StackInHand, stackStore } from "../../../session/stackStore"
import { useWords } from "../../../session/words"
import "../hairline/overlay.css"
import { useDrag } from "../hairline/useDrag"
import { holdOf, rowUnder } from "./stackHand"

/** What lies over a page of the map while a stack is chosen: in the large view a handle on its last parting. */
export function StackOverlay({ pane }: { pane: OverlaidPane }) {
  const stack = useStore(stackStore, (state) => state.stack)
  const hold = stack && pane.enlarged ? holdOf(stack, stack.shown, pane.scene) : null
  return (
    <div className="pane-overlay">
      {stack && hold && <StackHandle pane={pane} stack={stack} hold={hold} />}
    </div>
  )
}

type Props = { pane: OverlaidPane; stack: StackInHand; hold: NonNullable<ReturnType<typeof holdOf>> }

/** Pulled back it makes more, pushed forward fewer; the arrow keys do the same by one. */
function StackHandle({ pane, stack, hold }: Props) {
  const w = useWords().placement.stack
  const onPane = pane.toPane(toView(pane.scene.view, pane.scene.head.surface, hold.at))
  const follow = (at: typeof hold.at | null) => {
    const row = at ? rowUnder(at, stack, hold.side, pane.scene) : stack.shown
    if (row !== stack.shown) stack.ask(row)
  }
  const hands = useDrag(pane, onPane, { move: follow, drop: follow, cancel() {} })
  const [x, y] = onPane
  const { shown, sides } = stack
  return (
    <div
      role="slider"
      tabIndex={0}
      className="handle is-named name-over"
      aria-label={w.handle}
      aria-orientation="vertical"
      aria-valuemin={1}
      aria-valuemax={stack.most}
      aria-valuenow={stack.shown}
      aria-valuetext={w.handleValue({ shown, sides })}
      style={{ transform: `translate(${x.toFixed(1)}px, ${y.toFixed(1)}px)` }}
      onKeyDown={(event) => askByKey(event, stack)}
      {...hands}
    >
      <span className="dot" />
      <span className="handle-name" aria-hidden="true">
        {w.handleName({ shown, sides })}
      </span>
    </div>
  )
}

const keys: Record<string, (shown: number, most: number) => number> = {
  ArrowUp: (shown) => shown + 1,
  ArrowRight: (shown) => shown + 1,
  ArrowDown: (shown) => shown - 1,
  ArrowLeft: (shown) => shown - 1,
  PageUp: (shown) => shown + 5,
  PageDown: (shown) => shown - 5,
  Home: () => 1,
  End: (_, most) => most,
}

function askByKey(event: KeyboardEvent, { shown, most, ask }: StackInHand) {
  const wanted = keys[event.key]?.(shown, most)
  if (wanted === undefined) return
  event.preventDefault()
  ask(Math.max(1, Math.min(most, wanted)))
}
