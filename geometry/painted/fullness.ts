import type { Painting } from "./painting"

/** What so many centimetres painted from the edge down come to, as centimetres of a full coat. */
export function fullCm({ featherMm, saturation }: Painting, paintedCm: number): number {
  const halfCm = featherMm / 20
  const soft = Math.min(paintedCm, halfCm)
  const middle = Math.min(Math.max(0, paintedCm - halfCm), halfCm)
  const full = Math.max(0, paintedCm - 2 * halfCm)
  return saturation.soft * soft + saturation.middle * middle + saturation.full * full
}
