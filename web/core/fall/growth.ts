import type { Range } from "../../../geometry/hair/tradeFigures"
import { growthMmAMonth, weeksAMonth } from "../../../presets/pigment/growth"

/** How far hair grows in so many weeks, mm. */
export function grownMm(weeks: number): Range {
  const { value, range } = growthMmAMonth
  const mm = (aMonth: number) => (aMonth * weeks) / weeksAMonth
  return { low: mm(range[0]), mid: mm(value), high: mm(range[1]) }
}
