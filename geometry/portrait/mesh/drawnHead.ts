import { add, cut, ellipsoid, type Field, paired, rod, sculpt } from "../../scalp/fields"
import { headDistance } from "../../scalp/headDistanceField"

/** The neck of the drawing ends here, mm, with a rounded edge. */
export const neckEndMm = -158

/** The mouth is modelled finer than the measured shape needs, by eye. */
const withMouth: Field = sculpt(
  headDistance,
  add(ellipsoid([0, 73.5, -46.5], [23, 17, 15]), 14), // set forward under the nose
  add(paired(rod([3.5, 89.2, -47.4], 3.3, [17, 81.5, -50], 1.5)), 4), // upper lip
  add(paired(rod([2, 87.6, -55.2], 3.7, [14, 82.5, -53.4], 1.7)), 4), // lower lip
  cut(paired(rod([0, 94, -51.5], 0.8, [8, 92, -50], 0.8)), 3), // between them
  cut(paired(rod([8, 92, -50], 0.8, [20, 84.6, -50.8], 0.5)), 3),
)

/** Signed distance to the head as it is drawn, mm: the measured head with a mouth and an end to the neck. */
export function drawnHeadDistance(x: number, y: number, z: number): number {
  const isByMouth = y > 45 && z > -100 && z < 5
  const head = isByMouth ? withMouth(x, y, z) : headDistance(x, y, z)
  const below = neckEndMm - z
  const overlap = Math.max(12 - Math.abs(head - below), 0) / 12
  return Math.max(head, below) + overlap * overlap * 3
}
