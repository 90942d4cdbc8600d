import type { ScreenPoint } from "../../../geometry/surface/frames"

/** A tap of several fingers lasts no longer, ms, and strays no farther, pixels. */
const quickMs = 350
const stillPx = 10

/** Fingers that came down together: how many at most, when the first, and whether they have stayed where they were. */
export type FingerTap = {
  fingers: number
  sinceMs: number
  from: ReadonlyMap<number, ScreenPoint>
  isStill: boolean
}

export const noTap: FingerTap = { fingers: 0, sinceMs: 0, from: new Map(), isStill: false }

/** One more finger comes down, among those that are down already. */
export function fingerDown(
  tap: FingerTap,
  id: number,
  at: ScreenPoint,
  nowMs: number,
  isFirst: boolean,
): FingerTap {
  if (isFirst) return { fingers: 1, sinceMs: nowMs, from: new Map([[id, at]]), isStill: true }
  return { ...tap, fingers: tap.fingers + 1, from: new Map([...tap.from, [id, at]]) }
}

/** A finger moves: a tap forgives a tremor. */
export function fingerMoved(tap: FingerTap, id: number, [x, y]: ScreenPoint): FingerTap {
  const from = tap.from.get(id)
  const strays = !from || Math.hypot(x - from[0], y - from[1]) > stillPx
  return strays && tap.isStill ? { ...tap, isStill: false } : tap
}

/** How many fingers tapped, once the last is up; 0 when it was a stroke, a pinch or a rest. */
export const fingersTapped = ({ fingers, sinceMs, isStill }: FingerTap, nowMs: number) =>
  isStill && nowMs - sinceMs < quickMs ? fingers : 0
