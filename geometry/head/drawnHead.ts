import { cut, type Field, paired, rod, sculpt } from "./fields"
import { headDistance } from "./shape"

/** The neck of the drawing ends here, mm, with a rounded edge. */
export const neckEndMm = -158

const withLips: Field = sculpt(
  headDistance,
  cut(paired(rod([0, 91.5, -51.2], 0.9, [20, 82.5, -51.2], 0.5)), 3.5), // between the lips
)

/** Signed distance to the head as it is drawn, mm: the measured head with parted lips and an end to the neck. */
export function drawnHeadDistance(x: number, y: number, z: number): number {
  const [head, below] = [
    z > -75 && z < -30 && y > 60 ? withLips(x, y, z) : headDistance(x, y, z),
    neckEndMm - z,
  ]
  const overlap = Math.max(12 - Math.abs(head - below), 0) / 12
  return Math.max(head, below) + overlap * overlap * 3
}
