import type { Range } from "../../../geometry/hair/tradeFigures"
import { weeksAMonth } from "../../../presets/pigment/growth"
import { growthMmPerMonth } from "../../../presets/placement/growth"

/** How far hair grows in so many weeks, mm. */
export function grownMm(weeks: number): Range {
  const { value, range } = growthMmPerMonth
  const mm = (aMonth: number) => (aMonth * weeks) / weeksAMonth
  return { low: mm(range[0]), mid: mm(value), high: mm(range[1]) }
}
