import type { Figure } from "../../../presets/figure/figure"
import { growthMmPerMonth } from "../../../presets/placement/growth"

/** New hair at the scalp since hair was lightened, mm: the least, what is likely, and the most. */
export type Growth = { lowMm: number; midMm: number; highMm: number }

const monthsAYear = 12
const weeksAYear = 52
const weekMs = 7 * 86_400_000

/** Weeks from one day of the calendar to another; none where the second comes first, as a clock set back says. */
export const weeksBetween = (from: string, to: string) =>
  Math.max(0, (Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / weekMs)

/** What grows in so many weeks. */
export function growthIn(weeks: number, { value, range: [least, most] }: Figure = growthMmPerMonth): Growth {
  const grown = (mmAMonth: number) => (weeks * monthsAYear * mmAMonth) / weeksAYear
  return { lowMm: grown(least), midMm: grown(value), highMm: grown(most) }
}

export const growthMeasured = (mm: number): Growth => ({ lowMm: mm, midMm: mm, highMm: mm })

export const addGrowth = (one: Growth, two: Growth): Growth => ({
  lowMm: one.lowMm + two.lowMm,
  midMm: one.midMm + two.midMm,
  highMm: one.highMm + two.highMm,
})
