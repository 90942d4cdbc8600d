import type { Pair } from "../surface/frames"
import type { FaceCurve } from "./faceCurve"

/** The folds drawn on the right ear, in (forward, up) of the plain ear, mm; mirrored to the left. */
export const earCurves: readonly Omit<FaceCurve, "seenFrom">[] = [
  fold("fine", [...arc([0, 1], [8.7, 22.4], 15, 245)]),
  fold("fine", [...arc([1.5, -1], [7, 11.8], 80, 290), [6, -11.5], [8.6, -9], [10, -5], [9, -1]]),
]

function fold(weight: FaceCurve["weight"], points: Pair[]): Omit<FaceCurve, "seenFrom"> {
  return { part: "ear", weight, points, isMirrored: true }
}

/** An arc of an ellipse from one angle to another, degrees from forward, upward. */
function arc([u, v]: Pair, [a, b]: Pair, from: number, to: number): Pair[] {
  const count = Math.ceil((to - from) / 20)
  return Array.from({ length: count + 1 }, (_, i) => {
    const angle = ((from + ((to - from) * i) / count) * Math.PI) / 180
    return [u + a * Math.cos(angle), v + b * Math.sin(angle)]
  })
}
