import type { Figure } from "../../../presets/figure/figure"
import { returnWeeks } from "../../../presets/sheets/aftercare"
import { visitLimits } from "../../../presets/timing/visitLimits"

/** Days of the calendar, "2026-03-09", from the first to the last that suits. */
export type Days = { from: string; to: string }

/** When a client comes back, counted from the day of the service; the alert test is on the skin by `testBy`. */
export type Returns = { toner: Days | null; frame: Days; testBy: string }

const dayMs = 86_400_000

export function returnDates(serviceDay: string, isToned: boolean): Returns {
  const frame = after(serviceDay, returnWeeks.frame)
  const toner = isToned ? after(serviceDay, returnWeeks.toner) : null
  const testDays = Math.ceil(visitLimits.alertTestHours / 24)
  return { toner, frame, testBy: later((toner ?? frame).from, -testDays) }
}

const after = (day: string, { range: [least, most] }: Figure): Days => ({
  from: later(day, 7 * least),
  to: later(day, 7 * most),
})

const later = (day: string, days: number) =>
  new Date(Date.parse(`${day}T00:00:00Z`) + days * dayMs).toISOString().slice(0, 10)
