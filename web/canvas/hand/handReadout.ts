import type { ScreenPoint } from "../../../geometry/surface/frames"

/** How far the words stand from the hand, pixels: clear of a fingertip, or of the pointer and a pen's point. */
const clearOf = { touch: 68, pen: 40, mouse: 22 } as const
const marginPx = 6

/** Where the hand is on the pane, where its stroke began, and what it is: touch, pen or mouse. */
export type Hand = { at: ScreenPoint; from: ScreenPoint | null; pointerType: string }

export type Readout = {
  /** Shows lines beside the hand; none take the words away. */
  show(lines: readonly string[], hand?: Hand): void
  remove(): void
}

/** Words beside the hand on one pane: above it, or to its side where there is no room above; never under it. */
export function makeReadout(pane: HTMLElement): Readout {
  const box = document.createElement("div")
  box.className = "hand-readout"
  box.hidden = true
  box.setAttribute("aria-hidden", "true")
  pane.append(box)
  return {
    show(lines, hand) {
      box.hidden = lines.length === 0 || !hand
      if (box.hidden || !hand) return
      const text = lines.join("\n")
      if (box.textContent !== text) box.textContent = text
      const clearPx = clearOf[hand.pointerType as keyof typeof clearOf] ?? clearOf.mouse
      const [left, top] = placeReadout(hand, clearPx, {
        box: [box.offsetWidth, box.offsetHeight],
        pane: [pane.clientWidth, pane.clientHeight],
      })
      box.style.transform = `translate(${Math.round(left)}px, ${Math.round(top)}px)`
    },
    remove: () => box.remove(),
  }
}

type Size = readonly [width: number, height: number]
type Sizes = { box: Size; pane: Size }

/**
 * The top left corner of the words, pixels of the pane: above the hand, on the side to which its stroke runs; below a
 * mouse that runs down, since no hand lies there.
 */
export function placeReadout(
  { at: [x, y], from, pointerType }: Hand,
  clearPx: number,
  { box: [width, height], pane }: Sizes,
): Size {
  const within = (at: number, size: number, room: number) =>
    Math.max(marginPx, Math.min(room - size - marginPx, at))
  const runsLeft = from !== null && from[0] > x
  const left = from === null ? x - width / 2 : runsLeft ? x - width : x
  const [above, below] = [y - clearPx - height, y + clearPx]
  const runsDown = pointerType === "mouse" && from !== null && from[1] < y - marginPx
  if (runsDown && below + height + marginPx <= pane[1]) return [within(left, width, pane[0]), below]
  if (above >= marginPx) return [within(left, width, pane[0]), above]
  const [toLeft, toRight] = [x - clearPx - width, x + clearPx]
  const fitsRight = toRight + width + marginPx <= pane[0]
  const aside = fitsRight && !(runsLeft && toLeft >= marginPx) ? toRight : toLeft
  if (aside >= marginPx) return [aside, within(y - height / 2, height, pane[1])]
  return [within(left, width, pane[0]), Math.min(below, pane[1] - height - marginPx)]
}
