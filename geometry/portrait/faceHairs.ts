import type { Pair } from "../surface/frames"
import { type FaceCurve, onEachSide, pairs } from "./faceCurve"

const lowerBrow = pairs([10.5, 24.6, 22, 27.4, 33, 30.2, 42, 29.8, 54, 23.6])
const upperBrow = pairs([10.5, 29.8, 22, 33, 33, 35.2, 42, 33.4, 54, 23.8])

/** Short strokes leaning along the brow, from its lower edge to its upper, as a pencil would. */
export const browHairs = (): FaceCurve[] =>
  Array.from({ length: 22 }, (_, i) => {
    const x = 11 + i * 1.85
    const to = Math.min(54, x + 1.8 + 0.27 * i)
    const [from, up] = [heightOn(lowerBrow, x), heightOn(upperBrow, to)]
    const bend: Pair = [x + (to - x) * 0.4, from + (up - from) * 0.55]
    return onEachSide({ part: "brow", weight: "fine" }, [[x, from], bend, [to, up]])
  })

/** Short strokes down from the lash line, longer toward the outer corner. */
export const lashes = (lashLine: readonly Pair[]): FaceCurve[] =>
  [25, 29, 33, 36.5, 39.8, 42.8, 45.4].map((x, i) => {
    const z = heightOn(lashLine, x)
    const reach = 2.1 + 0.22 * i
    const aside = reach * (0.1 + 0.12 * i)
    const bend: Pair = [x + aside * 0.4, z - reach * 0.6]
    return onEachSide({ part: "eye", weight: "fine" }, [[x, z], bend, [x + aside, z - reach]])
  })

/** Height of a line at a place across, by straight pieces. */
function heightOn(line: readonly Pair[], x: number): number {
  const after = line.findIndex(([to]) => to >= x)
  const [[fromX, fromZ], [toX, toZ]] = [line[Math.max(0, after - 1)], line[Math.max(1, after)]]
  return fromZ + ((toZ - fromZ) * (x - fromX)) / (toX - fromX)
}
