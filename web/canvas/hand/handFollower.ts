import type { ScreenPoint } from "../../../geometry/surface/frames"
import type { PaneState } from "../paint/paneState"
import type { Pointer } from "../tools/tool"
import { makeReadout } from "./handReadout"
import { handWords } from "./handWords"

/** A hand at one moment: what it means on the head, and where and what it is on the pane. */
export type HandMoment = { pointer: Pointer; at: ScreenPoint; pointerType: string }

/** Keeps up with a hand once a frame, and tells beside it where it is. */
export type HandFollower = {
  /** A stroke begins here: the words keep out of its way. */
  begin(moment: HandMoment): void
  follow(moment: HandMoment): void
  /** What is still to come of the last moment comes now; then the stroke is over. */
  settle(): void
  /** Nothing is to come any more, and nothing is told. */
  forget(): void
  remove(): void
}

/** `moved` is called for each moment that is followed, before it is told. */
export function followHand(
  element: HTMLElement,
  pane: { readonly current: PaneState },
  moved: (pointer: Pointer) => void,
): HandFollower {
  const readout = makeReadout(element)
  let pending: HandMoment | null = null
  let from: ScreenPoint | null = null
  let frame = 0

  const tell = ({ pointer, at, pointerType }: HandMoment) =>
    readout.show(pane.current.enlarged ? handWords(pointer, pane.current) : [], { at, from, pointerType })

  const flush = () => {
    frame = 0
    if (!pending) return
    const moment = pending
    pending = null
    moved(moment.pointer)
    tell(moment)
  }

  const forget = () => {
    cancelAnimationFrame(frame)
    frame = 0
    pending = null
    from = null
    readout.show([])
  }

  return {
    begin(moment) {
      from = moment.at
      tell(moment)
    },
    follow(moment) {
      pending = moment
      frame ||= requestAnimationFrame(flush)
    },
    settle() {
      cancelAnimationFrame(frame)
      flush()
    },
    forget,
    remove() {
      forget()
      readout.remove()
    },
  }
}
